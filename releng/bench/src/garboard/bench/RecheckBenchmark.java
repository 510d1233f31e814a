// SPDX-License-Identifier: EPL-2.0
package garboard.bench;

import java.util.List;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

import garboard.checks.Evaluator;
import garboard.checks.Verdict;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardPackage;

/** What follows the edit of one field: the verdicts that it can change, judged anew. */
@State(Scope.Benchmark)
public class RecheckBenchmark {

    @Param({})
    private String example;

    /** Heights are read by many checks, the length of a cable by some, the bore of the siphon break by few. */
    @Param({"Point.z", "CableRun.length", "SiphonBreak.bore"})
    private String edited;

    private Evaluator evaluator;
    private CommissioningRecord record;
    private EStructuralFeature feature;

    @Setup
    public void read() {
        evaluator = ExampleRecord.evaluator();
        record = ExampleRecord.named(example).file().record();
        String[] names = edited.split("\\.");
        feature = ((EClass) GarboardPackage.eINSTANCE.getEClassifier(names[0])).getEStructuralFeature(names[1]);
    }

    @Benchmark
    public List<Verdict> recheck() {
        return evaluator.reevaluate(feature, record, ExampleRecord.DAY);
    }
}
