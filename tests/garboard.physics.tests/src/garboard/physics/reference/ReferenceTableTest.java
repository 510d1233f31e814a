// SPDX-License-Identifier: EPL-2.0
package garboard.physics.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import garboard.physics.Status;

class ReferenceTableTest {

    private static final Pattern STATUS_WORD = Pattern.compile("[A-Z_]{4,}");

    @Test
    void readsCellsAndSource() {
        ReferenceTable table = ReferenceTable.load("performance-class-limits.csv");
        assertThat(table.source()).startsWith("source: ISO 8528-5").contains("status:");
        int row = table.rowOf("criterion", "FREQUENCY_DROOP").orElseThrow();
        assertThat(table.figure(row, "G2")).contains(5.0);
        assertThat(table.text(row, "status")).isEqualTo("RETRIEVED");
        assertThat(table.figure(table.rowOf("criterion", "VOLTAGE_MODULATION").orElseThrow(), "G1")).isEmpty();
        assertThat(table.rowOf("criterion", "COLOUR")).isEmpty();
    }

    @Test
    void refusesAFileOrAColumnThatIsNotThere() {
        assertThatThrownBy(() -> ReferenceTable.load("nothing.csv")).isInstanceOf(IllegalStateException.class).hasMessageContaining("nothing.csv");
        ReferenceTable table = ReferenceTable.load("battery-load-test.csv");
        assertThatThrownBy(() -> table.figures("t_F")).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("t_F")
                .hasMessageContaining("t_C");
    }

    @Test
    void interpolatesInAnyOrderAndNeverBeyondTheEnds() {
        Interpolation line = new Interpolation(new double[] {3, 1, 2}, new double[] {30, 10, 0});
        assertThat(line.at(1.5)).isCloseTo(5, within(1e-12));
        assertThat(line.at(3)).isCloseTo(30, within(1e-12));
        assertThat(line.at(3 + 1e-12)).isCloseTo(30, within(1e-9));
        assertThat(line.lowest()).isEqualTo(1);
        assertThat(line.highest()).isEqualTo(3);
        assertThatThrownBy(() -> line.at(3.01)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> line.at(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void everyTableNamesItsSourceAndAKnownStatus() throws Exception {
        for (String file : tables()) {
            String source = ReferenceTable.load(file).source();
            assertThat(source).as(file).matches("source: \\S.*; status: \\S.*");
            List<String> known = Stream.of(Status.values()).map(Status::name).toList();
            assertThat(STATUS_WORD.matcher(source.substring(source.lastIndexOf("status: ") + 8)).results().map(MatchResult::group)).as(file)
                    .isNotEmpty().isSubsetOf(known);
        }
    }

    /** From the sources, which list their files alike on a class path and in a framework. */
    private static List<String> tables() throws Exception {
        String named = System.getProperty("garboard.repository", "");
        for (Path folder = Path.of(named).toAbsolutePath(); folder != null; folder = folder.getParent()) {
            Path tables = folder.resolve("bundles/garboard.physics/src/garboard/physics/reference");
            if (Files.isDirectory(tables)) {
                return csvFilesIn(tables);
            }
        }
        throw new AssertionError("no repository at or above " + Path.of(named).toAbsolutePath());
    }

    private static List<String> csvFilesIn(Path folder) throws Exception {
        try (Stream<Path> files = Files.list(folder)) {
            List<String> names = files.map(path -> path.getFileName().toString()).filter(name -> name.endsWith(".csv")).toList();
            assertThat(names).hasSizeGreaterThan(10);
            return names;
        }
    }
}
