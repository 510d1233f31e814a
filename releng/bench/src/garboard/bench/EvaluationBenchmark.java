// SPDX-License-Identifier: EPL-2.0
package garboard.bench;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

import garboard.checks.Evaluation;
import garboard.checks.Evaluator;
import garboard.model.CommissioningRecord;

/** All checks on a full record. */
@State(Scope.Benchmark)
public class EvaluationBenchmark {

    @Param({})
    private String example;

    private Evaluator evaluator;
    private CommissioningRecord record;

    @Setup
    public void read() {
        evaluator = ExampleRecord.evaluator();
        record = ExampleRecord.named(example).file().record();
    }

    @Benchmark
    public Evaluation evaluate() {
        return evaluator.evaluate(record, ExampleRecord.DAY);
    }
}
