// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;

import javax.imageio.ImageIO;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

import garboard.model.FuelKind;
import garboard.model.GarboardFactory;
import garboard.model.Photograph;

class OtherSheetsTest {

    @Test
    void warnsOfPetrolUnlessThereIsSurelyNoneAboard() {
        var record = SampleRecord.make();
        assertThat(Sheets.words(Sheets.report(record), "Cautions")).doesNotContain("Petrol");
        record.getVessel().setGasolineEngineAboard(garboard.model.Answer.YES);
        assertThat(Sheets.words(Sheets.report(record), "Cautions")).contains("Petrol");
        record.getVessel().setGasolineEngineAboard(garboard.model.Answer.NO);
        record.getGeneratorSet().setFuel(FuelKind.NOT_ENTERED);
        assertThat(Sheets.words(Sheets.report(record), "Cautions")).contains("Petrol");
    }

    @Test
    void cautionsNameEveryDanger() {
        assertThat(Sheets.words(Sheets.sample(), "Cautions")).contains("Carbon monoxide", "Mains voltage", "Running parts", "hose", "battery");
    }

    @Test
    void readingsStandBesideTheMakersLimitInOneUnit() {
        Table table = Sheets.tables(Sheets.sample(), "Readings").getFirst();
        int oil = Sheets.row(table, "Oil pressure");
        assertThat(Sheets.number(table, oil, "09:40")).isCloseTo(62 * 6.894757, offset(1e-3)); // NIST SP 811: 1 psi = 6.894757 kPa
        assertThat(Sheets.text(table.rows().get(oil + 1).cells().getFirst())).contains("at least");
        assertThat(Sheets.number(table, oil + 1, "10:15")).isEqualTo(150);
        int back = Sheets.row(table, "Back pressure");
        assertThat(Sheets.text(table.rows().get(back + 1).cells().getFirst())).contains("at most");
    }

    @Test
    void allReadingsOfATrialStandSideBySide() {
        var record = SampleRecord.make();
        var readings = record.getTrial().getLoadSteps().getFirst().getReadings();
        for (int more = 0; more < 12; more++) {
            readings.add(EcoreUtil.copy(readings.getFirst()));
        }
        assertThat(Sheets.tables(Sheets.report(record), "Readings")).hasSize(1);
    }

    @Test
    void tellsTheSmokeOnceForAllReadingsThatSawTheSame() {
        assertThat(Sheets.words(Sheets.sample(), "Readings")).contains("Smoke none: 10:15");
    }

    @Test
    void chartsStayReadable() {
        List<Chart> charts = Sheets.sample().sheet("Readings").orElseThrow().blocks().stream().filter(ChartRow.class::isInstance)
            .flatMap(row -> ((ChartRow) row).charts().stream()).toList();
        assertThat(charts).extracting(Chart::title).contains("Frequency", "Voltage", "Back pressure", "Oil pressure");
        assertThat(charts).allSatisfy(chart -> assertThat(chart.series()).hasSizeLessThanOrEqualTo(4));
        Chart back = charts.stream().filter(chart -> chart.title().equals("Back pressure")).findFirst().orElseThrow();
        assertThat(back.series()).extracting(Chart.Series::name).containsExactly("Back pressure", "Limit: back pressure");
        assertThat(back.series()).extracting(Chart.Series::limit).containsExactly(false, true);
    }

    @Test
    void readingsThatWereNotTakenStayBlank() {
        Table table = Sheets.tables(Sheets.sample(), "Readings").getFirst();
        assertThat(Sheets.cell(table, Sheets.row(table, "Power"), "09:40")).isEqualTo(Cell.BLANK);
    }

    @Test
    void trialAddsUpTheCranking() {
        Table cranking = Sheets.tables(Sheets.sample(), "Trial").get(1);
        assertThat(Sheets.number(cranking, Sheets.row(cranking, "Cranked in all"), "Cranked s")).isEqualTo(12);
    }

    @Test
    void upkeepTellsWhenWorkIsDue() {
        Table plan = Sheets.tables(Sheets.sample(), "Upkeep").getFirst();
        assertThat(Sheets.cell(plan, Sheets.row(plan, "Impeller"), "Due on")).isEqualTo(new Cell.DayAfter("lastDay", "everyMonths"));
        assertThat(Sheets.number(plan, Sheets.row(plan, "Oil and filter"), "Due at h")).isEqualTo(153);
    }

    @Test
    void showsPhotographsAndNamesThoseThatNoWorkbookCanShow() throws IOException {
        var record = SampleRecord.make();
        record.getPhotographs().add(photograph("Muffler from aft", png()));
        record.getPhotographs().add(photograph("Cut short", new byte[] {(byte) 0x89, 'P', 'N', 'G'}));
        Report report = Sheets.report(record);
        PictureRow row = (PictureRow) report.sheet("Photographs").orElseThrow().blocks().getFirst();
        PictureRow.Photo photo = row.photographs().getFirst();
        assertThat(photo.caption()).isEqualTo("Muffler from aft");
        assertThat(photo.format()).isEqualTo(PictureRow.Format.PNG);
        assertThat(photo.widthMm() / photo.heightMm()).isCloseTo(4.0 / 3, offset(1e-9));
        assertThat(row.photographs()).hasSize(1);
        assertThat(Sheets.words(report, "Photographs")).contains("Cut short");
    }

    private static Photograph photograph(String caption, byte[] data) {
        Photograph photograph = GarboardFactory.eINSTANCE.createPhotograph();
        photograph.setCaption(caption);
        photograph.setData(data);
        return photograph;
    }

    private static byte[] png() throws IOException {
        var bytes = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", bytes);
        return bytes.toByteArray();
    }
}
