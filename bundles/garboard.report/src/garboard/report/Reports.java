// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import garboard.checks.Evaluation;
import garboard.model.CommissioningRecord;
import garboard.model.GeneratorSet;
import garboard.model.Vessel;

/** Composes reports. */
public final class Reports {

    /** The sheets in the order of reading. */
    private static final List<Function<Material, Optional<Sheet>>> SHEETS = List.of(SummarySheet::of, CautionsSheet::of,
        ParticularsSheet::of, ChecksSheet::of, ShortfallsSheet::of, NotApplicableSheet::of, DrawingsSheet::of, TrialSheet::of,
        ReadingsSheet::of, LoadAnalysisSheet::of, StartCardSheet::of, UpkeepSheet::of, PhotographsSheet::of, InstrumentsSheet::of, RecordSheet::of);

    private Reports() {
    }

    /**
     * The report on a record. Reads both, changes and judges nothing.
     *
     * @param record the record
     * @param evaluation the verdicts on it
     * @param options what the reader wants
     */
    public static Report compose(CommissioningRecord record, Evaluation evaluation, ReportOptions options) {
        Material material = Material.of(record, evaluation, options);
        List<Sheet> sheets = SHEETS.stream().map(sheet -> sheet.apply(material)).flatMap(Optional::stream).toList();
        return new Report("Commissioning record", Material.present(record.getRecordNumber()).orElse(""), subject(record), sheets,
            evaluation.verdicts().stream().map(VerdictOfTheDay::of).toList(), options);
    }

    private static String subject(CommissioningRecord record) {
        Optional<String> vessel = Optional.ofNullable(record.getVessel()).map(Vessel::getName).flatMap(Material::present);
        GeneratorSet set = record.getGeneratorSet();
        Optional<String> plate = set == null ? Optional.empty()
            : Optional.of(Stream.of(set.getMaker(), set.getType(), set.getSerialNumber()).flatMap(text -> Material.present(text).stream())
                .collect(Collectors.joining(" "))).filter(text -> !text.isEmpty());
        return Stream.concat(vessel.stream(), plate.stream()).collect(Collectors.joining("  \u00b7  "));
    }
}
