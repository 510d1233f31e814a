// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.io.RecordFile;
import garboard.model.io.RecordReadException;
import garboard.report.excel.EmbeddedRecord;
import garboard.report.excel.WorkbookReadException;
import garboard.report.excel.WorkbookReader;

/** An installer begins a record, enters a siphon break that stands too low, is told, takes the way out, takes it back, hands over a workbook. */
public abstract class FromNewRecordToReport extends Scenario {

    private static final String VENT_SEAT = "field:rawWater.siphonBreak.ventSeat.z";
    private static final String CHECK = "Siphon break stands well above the loaded waterline";

    @Test
    void anInstallerFindsAShortfallMendsItOnPaperAndExportsTheReport() throws Exception {
        Hand hand = open();
        hand.press("start.new");
        hand.type("field:vessel.name", "Made-up Tern");
        hand.choose("field:vessel.hullKind", "Sailing monohull");

        hand.pick("walk.tree", "Raw water");
        hand.choose("field:rawWater.siphonBreak.kind", "Vented loop with valve");
        hand.type(VENT_SEAT, "8 in");
        // 8 in against 12 in, trade press (see the check)
        hand.await("the shortfall to be told", () -> shortfall(hand, true));

        hand.pick("verdicts.list", CHECK);
        hand.await("the remedy to be offered", () -> hand.canUse("verdicts.apply"));
        hand.press("verdicts.apply");
        hand.await("the remedy in the field", () -> hand.read(VENT_SEAT).contains("300 mm"));
        hand.await("the shortfall to be gone", () -> shortfall(hand, false));

        hand.press("garboard.tool.undo");
        hand.await("the entry as it was typed", () -> "8 in".equals(hand.read(VENT_SEAT)));
        hand.await("the shortfall to be back", () -> shortfall(hand, true));

        Path record = folder.resolve("tern.garboard");
        answers().nextFile(record);
        hand.press("garboard.tool.save");
        hand.await("the record on the disk", () -> Files.exists(record));
        Path workbook = folder.resolve("tern.xlsx");
        answers().nextFile(workbook);
        hand.press("garboard.tool.report");
        hand.await("the workbook on the disk", () -> Files.exists(workbook) && hand.canUse("export.done"));
        hand.press("export.done");

        assertThat(record(record).getRawWater().getSiphonBreak().getVentSeat().getZ()).hasToString("8 in");
        assertThat(inside(workbook).getVessel().getName()).isEqualTo("Made-up Tern");
    }

    /** Whether the check stands among those that fall short, as the list shows it. */
    private static boolean shortfall(Hand hand, boolean expected) {
        boolean seen = hand.rows("verdicts.list").stream().anyMatch(row -> row.contains(CHECK) && row.toLowerCase(java.util.Locale.ROOT).contains("falls short"));
        return seen == expected;
    }

    private static CommissioningRecord record(Path file) throws RecordReadException {
        return RecordFile.open(file).record();
    }

    private static CommissioningRecord inside(Path workbook) throws WorkbookReadException, RecordReadException, IOException {
        EmbeddedRecord embedded = new WorkbookReader().readEnclosedFile(workbook);
        return RecordFile.read(new java.io.ByteArrayInputStream(embedded.bytes()), "the record in the workbook").record();
    }
}
