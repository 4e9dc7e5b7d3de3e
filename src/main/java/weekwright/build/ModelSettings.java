package weekwright.build;

import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Quantity;

/**
 * Settings of the forecast ([model] in project.toml). One row. Defaults: rule 99.
 *
 * @param joiningDrift nothing means learned; 0 switches it off
 * @param turnout nothing means learned; 1 switches it off
 * @param foundShare nothing means learned; 0 switches it off
 * @param lateTogether whether it is learned of deliveries that are late together; nothing means yes
 */
public record ModelSettings(
        @Bounds(min = 0.1, max = 10) Optional<Quantity> priorRatio,
        @Bounds(min = 0, max = 1200) Optional<Quantity> effortHalfLife,
        @Bounds(min = 0, max = 1200) Optional<Quantity> supportersHalfLife,
        @Bounds(min = 0, max = 10) Optional<Quantity> joiningDrift,
        @Bounds(min = 0, max = 10) Optional<Quantity> turnout,
        @Bounds(min = 0, max = 10) Optional<Quantity> foundShare,
        Optional<Boolean> editingFirst,
        @Bounds(min = 0, max = 1000) Optional<Quantity> cameraFixed,
        @Bounds(min = 0, max = 1000) Optional<Quantity> cameraOperator,
        Optional<Boolean> lateTogether) {}
