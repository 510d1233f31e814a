// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.function.Consumer;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.HullKind;
import garboard.model.io.RecordFile;
import garboard.quantity.Length;
import garboard.quantity.UnitSystem;

class FilledFormTest {

    @TempDir
    Path folder;

    private Path write(RecordFile base) throws Exception {
        Path form = folder.resolve("form.xlsx");
        try (OutputStream out = Files.newOutputStream(form)) {
            new FormWriter(UnitSystem.SI).write(base, out);
        }
        return form;
    }

    private CommissioningRecord fill(RecordFile base, Consumer<XSSFWorkbook> person) throws Exception {
        return new FormReader().read(filled(write(base), person)).record();
    }

    private Path filled(Path form, Consumer<XSSFWorkbook> person) throws IOException {
        Path filled = folder.resolve("filled.xlsx");
        try (var in = Files.newInputStream(form); var workbook = new XSSFWorkbook(in); OutputStream out = Files.newOutputStream(filled)) {
            person.accept(workbook);
            workbook.write(out);
        }
        return filled;
    }

    private static Row row(XSSFWorkbook form, String key) {
        for (Sheet sheet : form) {
            for (Row row : sheet) {
                if (CellText.of(row.getCell(FormGrid.KEY)).filter(key::equals).isPresent()) {
                    return row;
                }
            }
        }
        throw new AssertionError("The form has no row for " + key);
    }

    private static Cell field(XSSFWorkbook form, String key) {
        return row(form, FormGrid.FIELD + key).getCell(FormGrid.VALUE);
    }

    private static void enter(XSSFWorkbook form, String key, String value, String unit) {
        field(form, key).setCellValue(value);
        row(form, FormGrid.FIELD + key).getCell(FormGrid.UNIT).setCellValue(unit);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = { "19|mm|19 mm|0.019", "3/4|in|3/4 in|0.01905", "3/4 in|mm|3/4 in|0.01905", "19,5|mm|19,5 mm|0.0195",
        "5 ft 3 in|m|5 ft 3 in|1.6002", "450 ±5|mm|450 mm ±5 mm|0.45", "0.45 m ±1 %|mm|0.45 m ±1 %|0.45" })
    void takesNumbersAsPeopleWriteThem(String value, String unit, String asGiven, double metres) throws Exception {
        Length z = fill(RecordFile.create(), form -> enter(form, "rawWater.siphonBreak.ventSeat.z", value, unit)).getRawWater().getSiphonBreak()
            .getVentSeat().getZ();
        assertThat(z).isEqualTo(Length.valueOf(asGiven));
        assertThat(z.si()).isEqualTo(metres);
    }

    @Test
    void takesANumberThatTheSpreadsheetProgramMadeANumber() throws Exception {
        CommissioningRecord record = fill(RecordFile.create(), form -> field(form, "vessel.beam").setCellValue(4.2));
        assertThat(record.getVessel().getBeam().si()).isEqualTo(4.2);
        assertThat(record.getVessel().getBeam().givenNumber()).isEqualTo("4.2");
    }

    @Test
    void takesChoicesInTheWordsOfTheListAndDatesAndWholeNumbers() throws Exception {
        CommissioningRecord record = fill(RecordFile.create(), form -> {
            field(form, "vessel.hullKind").setCellValue("sailing monohull");
            field(form, "vessel.passengers").setCellValue(12);
            field(form, "createdOn").setCellValue("2026-05-31");
        });
        assertThat(record.getVessel().getHullKind()).isEqualTo(HullKind.SAILING_MONOHULL);
        assertThat(record.getVessel().getPassengers()).isEqualTo(12);
        assertThat(record.getCreatedOn()).isEqualTo(LocalDate.of(2026, 5, 31));
    }

    @Test
    void textThatLooksLikeAFormulaStaysText() throws Exception {
        CommissioningRecord record = fill(RecordFile.create(), form -> field(form, "vessel.name").setCellValue("=1+1"));
        assertThat(record.getVessel().getName()).isEqualTo("=1+1");
    }

    @Test
    void everyMistakeIsNamedBySheetAndCellAndNothingIsTakenOver() throws Exception {
        Path filled = filled(write(RecordFile.create()), form -> {
            enter(form, "vessel.beam", "4,200", "m");
            enter(form, "rawWater.siphonBreak.ventSeat.z", "450", "kg");
            field(form, "vessel.hullKind").setCellValue("submarine");
            field(form, "createdOn").setCellValue("31.5.2026");
            enter(form, "vessel.draught", "12", "");
        });
        var refused = catchThrowableOfType(FormReadException.class, () -> new FormReader().read(filled));
        assertThat(refused.mistakes()).hasSize(5);
        assertThat(refused.mistakes()).allSatisfy(mistake -> {
            assertThat(mistake.cell()).matches("C\\d+");
            assertThat(mistake.problem()).matches("(?s).*(right would be|use|write).*");
        });
        assertThat(refused.mistakes()).extracting(FormMistake::sheet).containsExactlyInAnyOrder("Vessel", "Raw water", "Vessel", "Record", "Vessel");
        assertThat(refused.mistakes()).extracting(FormMistake::problem).anyMatch(problem -> problem.contains("submarine"))
            .anyMatch(problem -> problem.contains("kg")).anyMatch(problem -> problem.contains("31.5.2026"));
    }

    @Test
    void addsItemsInTheBlankColumnsAndHangsItemsBelowThem() throws Exception {
        CommissioningRecord record = fill(RecordFile.create(), form -> {
            Row kind = row(form, FormGrid.ITEM_FIELD + "rawWater.hoses bore");
            kind.getCell(FormGrid.VALUE).setCellValue("19 mm");
            kind.getCell(FormGrid.VALUE + 1).setCellValue("1 in");
            String second = CellText.of(row(form, FormGrid.ITEMS_OF + "rawWater.hoses").getCell(FormGrid.VALUE + 1)).orElseThrow();
            row(form, FormGrid.BELONGS + "rawWater.hoses.fittings").getCell(FormGrid.VALUE).setCellValue(second);
            row(form, FormGrid.ITEM_FIELD + "rawWater.hoses.fittings count").getCell(FormGrid.VALUE).setCellValue(3);
        });
        assertThat(record.getRawWater().getHoses()).extracting(hose -> hose.getBore().toString()).containsExactly("19 mm", "1 in");
        assertThat(record.getRawWater().getHoses()).extracting("id").doesNotContainNull().doesNotHaveDuplicates();
        assertThat(record.getRawWater().getHoses().get(1).getFittings()).singleElement()
            .satisfies(fitting -> assertThat(fitting.getCount()).isEqualTo(3));
    }

    @Test
    void anItemThatBelongsToNothingIsAMistake() throws Exception {
        Path filled = filled(write(RecordFile.create()), form -> row(form, FormGrid.ITEM_FIELD + "rawWater.hoses.fittings count")
            .getCell(FormGrid.VALUE).setCellValue(3));
        var refused = catchThrowableOfType(FormReadException.class, () -> new FormReader().read(filled));
        assertThat(refused.mistakes()).singleElement().satisfies(mistake -> assertThat(mistake.problem()).contains("belongs to nothing"));
    }

    @Test
    void emptyingACellRemovesTheValueAndEmptyingANumberAndItsColumnTheItem() throws Exception {
        RecordFile base = RecordFile.create();
        base.record().setVessel(GarboardFactory.eINSTANCE.createVessel());
        base.record().getVessel().setBeam(Length.of(4, "m"));
        base.record().setRawWater(GarboardFactory.eINSTANCE.createRawWaterCircuit());
        for (String bore : Arrays.asList("19 mm", "25 mm")) {
            var hose = GarboardFactory.eINSTANCE.createWaterHoseRun();
            hose.setBore(Length.valueOf(bore));
            base.record().getRawWater().getHoses().add(hose);
        }
        base.items().assign();
        CommissioningRecord record = fill(base, form -> {
            field(form, "vessel.beam").setBlank();
            row(form, FormGrid.ITEMS_OF + "rawWater.hoses").getCell(FormGrid.VALUE).setBlank();
            row(form, FormGrid.ITEM_FIELD + "rawWater.hoses bore").getCell(FormGrid.VALUE).setBlank();
        });
        assertThat(record.getVessel().getBeam()).isNull();
        assertThat(record.getRawWater().getHoses()).singleElement().satisfies(hose -> assertThat(hose.getBore().toString()).isEqualTo("25 mm"));
    }

    @ParameterizedTest
    @ValueSource(ints = { 0, 10, 1000, 20_000 })
    void aFormThatWasCutShortIsRefusedInOneSentence(int bytes) throws Exception {
        byte[] whole = Files.readAllBytes(write(RecordFile.create()));
        Path cut = Files.write(folder.resolve("cut.xlsx"), Arrays.copyOf(whole, Math.min(bytes, whole.length - 100)));
        assertThatThrownBy(() -> new FormReader().read(cut)).isInstanceOf(FormReadException.class).hasMessageContaining("cut.xlsx")
            .message().doesNotContain("\n").doesNotContain("Exception");
    }

    @Test
    void aForeignWorkbookAFolderAndAMissingFileAreRefusedInOneSentence() throws Exception {
        Path foreign = folder.resolve("foreign.xlsx");
        try (var workbook = new XSSFWorkbook(); OutputStream out = Files.newOutputStream(foreign)) {
            workbook.createSheet("Budget");
            workbook.write(out);
        }
        assertThatThrownBy(() -> new FormReader().read(foreign)).hasMessageContaining("is not a Garboard form");
        assertThatThrownBy(() -> new FormReader().read(folder)).hasMessageContaining("is a folder");
        assertThatThrownBy(() -> new FormReader().read(folder.resolve("none.xlsx"))).hasMessageContaining("does not exist");
    }
}
