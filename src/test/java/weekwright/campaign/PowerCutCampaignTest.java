package weekwright.campaign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One cut of the campaign; hundreds by command (see the guide). That each commit must be synced to outlast a power cut, and is not
 * under {@code synchronous=NORMAL}: SQLite's documentation, pragma.html, "PRAGMA synchronous", and wal.html section 2.3.
 */
class PowerCutCampaignTest {
    @TempDir
    Path folder;

    @BeforeEach
    void need() {
        assumeTrue(Shim.possible(), Shim.HOW);
    }

    @Test
    void what_was_acknowledged_is_on_the_disk_when_the_power_goes() throws Exception {
        PowerCutCampaign.Tally tally = PowerCutCampaign.run(folder, 1, 3, false, false);
        assertThat(tally.faults()).isEmpty();
        assertThat(tally.acknowledged()).isGreaterThanOrEqualTo(8);
        assertThat(tally.lost()).isZero();
    }

    @Test
    void a_server_that_does_not_sync_each_commit_is_found_out() throws Exception {
        PowerCutCampaign.Tally tally = PowerCutCampaign.run(folder, 1, 3, true, false);
        assertThat(tally.faults()).isEmpty();
        assertThat(tally.cutsWithLoss()).isEqualTo(1);
    }
}
