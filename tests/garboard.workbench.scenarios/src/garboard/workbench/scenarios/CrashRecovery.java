// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;

import org.junit.jupiter.api.Test;

/** The power fails while somebody types; the next start offers what was typed. */
public abstract class CrashRecovery extends Scenario {

    @Test
    void whatWasTypedBeforeTheProcessWasKilledIsOfferedAtTheNextStart() throws Exception {
        Path person = folder.resolve("person");
        try (ChildProcess killed = ChildProcess.start(childApplication(), Deed.TYPE_AND_WAIT, person, Map.of())) {
            killed.awaitMark();
            killed.kill();
        }
        try (ChildProcess next = ChildProcess.start(childApplication(), Deed.TAKE_UP, person, Map.of())) {
            next.awaitMark();
            Properties told = new Properties();
            told.load(new StringReader(next.result()));
            assertThat(told).containsEntry("beam", "3.2 m").containsEntry("draught", "four handspans");
        }
    }
}
