package weekwright.episodes;

import weekwright.base.Id;
import weekwright.base.Ref;

/**
 * Who brought an episode to a step.
 */
public record StepBy(
        @Ref("episodes") Id episode, Step step, @Ref("crew") Id crew) {}
