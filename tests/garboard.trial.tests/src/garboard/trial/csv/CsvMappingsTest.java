// SPDX-License-Identifier: EPL-2.0
package garboard.trial.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import garboard.trial.log.AcLine;
import garboard.trial.log.LogStamps;
import garboard.trial.log.Measurand;

class CsvMappingsTest {

    private static final CsvMapping SETTLED = new CsvMapping(';', ',', List.of("Datum", "Uhrzeit", "U [V]", "Öl"),
        new CsvTime(CsvTime.Form.DATE_AND_TIME, 0, 1, LogStamps.DateOrder.DAY_MONTH_YEAR, ZoneId.of("Europe/Berlin")),
        List.of(new CsvColumn(2, "U [V]", Measurand.AC_VOLTAGE, "V", AcLine.L2),
            new CsvColumn(3, "Öl", Measurand.OIL_PRESSURE, "bar", AcLine.NONE)));

    @TempDir
    private Path folder;

    @Test
    void remembersAMappingByItsHeadings() throws IOException {
        CsvMappings mappings = new CsvMappings(folder.resolve("mappings"));
        assertThat(mappings.of(SETTLED.headings())).isEmpty();
        mappings.remember(SETTLED);
        assertThat(new CsvMappings(folder.resolve("mappings")).of(SETTLED.headings())).contains(SETTLED);
        assertThat(mappings.of(List.of("Datum", "Uhrzeit", "U [V]"))).isEmpty();
    }

    @Test
    void forgetsWhatCannotBeReadAnyMore() throws IOException {
        CsvMappings mappings = new CsvMappings(folder);
        mappings.remember(SETTLED);
        Path file = Files.list(folder).findFirst().orElseThrow();
        for (String broken : List.of("", "{}", "[]", "null", "{\"separator\":\";;\"}", Files.readString(file).replace("AC_VOLTAGE", "SOUND"),
            Files.readString(file).replace("Europe/Berlin", "Nowhere"), Files.readString(file).replace("\"index\": 3", "\"index\": 30"))) {
            Files.writeString(file, broken);
            assertThat(mappings.of(SETTLED.headings())).as(broken).isEmpty();
        }
    }
}
