// SPDX-License-Identifier: EPL-2.0
package garboard.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

import garboard.model.io.RecordFile;
import garboard.model.io.RecordWriteException;
import garboard.quantity.UnitSystem;
import garboard.report.Report;
import garboard.report.excel.EmbeddedRecord;
import garboard.report.excel.Progress;
import garboard.report.excel.WorkbookWriter;
import garboard.report.excel.form.FormWriter;

/**
 * Writing the report and the form. The report is compared with bare POI that writes the same cells and pictures; for that its drawings
 * are put in ready-made, because drawing takes long and is no part of writing. {@code reportAndDrawings} is what a person waits for.
 */
@State(Scope.Benchmark)
public class WorkbookBenchmark {

    @Param({})
    private String example;

    private RecordFile record;
    private Report report;
    private Report drawn;
    private EmbeddedRecord embedded;
    private BareWorkbook bare;

    @Setup
    public void compose() throws IOException {
        ExampleRecord read = ExampleRecord.named(example);
        record = read.file();
        report = read.report();
        embedded = new EmbeddedRecord(example + RecordFile.ENDING, read.bytes());
        drawn = Drawn.of(report, written(report));
        bare = BareWorkbook.like(written(drawn));
    }

    @Benchmark
    public void report() throws IOException {
        new WorkbookWriter().write(drawn, embedded, OutputStream.nullOutputStream(), Progress.none());
    }

    @Benchmark
    public void bare() throws IOException {
        bare.write(OutputStream.nullOutputStream());
    }

    @Benchmark
    public void reportAndDrawings() throws IOException {
        new WorkbookWriter().write(report, embedded, OutputStream.nullOutputStream(), Progress.none());
    }

    @Benchmark
    public void form() throws IOException, RecordWriteException {
        new FormWriter(UnitSystem.SI).write(record, OutputStream.nullOutputStream());
    }

    private byte[] written(Report what) throws IOException {
        var bytes = new ByteArrayOutputStream();
        new WorkbookWriter().write(what, embedded, bytes, Progress.none());
        return bytes.toByteArray();
    }
}
