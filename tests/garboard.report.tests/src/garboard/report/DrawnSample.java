// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.List;

import garboard.checks.Evaluation;
import garboard.model.CommissioningRecord;
import garboard.report.drawing.ClearancePlot;
import garboard.report.drawing.CrossElevation;
import garboard.report.drawing.RunProfile;
import garboard.report.drawing.SideElevation;

/** The sample record for tests of the drawings. */
public final class DrawnSample {

    private DrawnSample() {
    }

    public static CommissioningRecord record() {
        return SampleRecord.make();
    }

    public static Evaluation evaluation(CommissioningRecord record) {
        return SamplePractice.evaluate(record);
    }

    public static List<Picture> pictures(CommissioningRecord record, Evaluation evaluation, Figures figures) {
        return List.of(SideElevation.of(record, evaluation, figures).picture(260, 130).orElseThrow(),
            CrossElevation.of(record, evaluation, figures).picture(260, 130).orElseThrow(),
            RunProfile.of(record, evaluation, figures).picture(260, 130).orElseThrow(),
            ClearancePlot.of(record, evaluation, figures).picture(260, 130).orElseThrow());
    }
}
