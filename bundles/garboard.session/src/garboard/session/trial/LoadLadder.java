// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.GeneratorSet;
import garboard.model.LoadStep;
import garboard.model.Trial;
import garboard.quantity.Ratio;
import garboard.quantity.TimeSpan;
import garboard.session.OpenRecord;

/**
 * The graded load of a short trial of a small marine set. Common practice: 10 min without load, 15 at a quarter, 30 at half and at three quarters,
 * an hour at full load; a tenth above it only where the rating declares it.
 */
public final class LoadLadder {

    private static final double SAME_LOAD = 0.005;

    private static final List<Rung> RUNGS = List.of(Rung.of("0 %", "10 min", 3), Rung.of("25 %", "15 min", 3), Rung.of("50 %", "30 min", 4),
        Rung.of("75 %", "30 min", 4), Rung.of("100 %", "60 min", 5));
    private static final Rung OVERLOAD = Rung.of("110 %", "60 min", 4);

    private LoadLadder() {
    }

    /**
     * One load of the ladder.
     *
     * @param load share of the rated power
     * @param dwell how long it is usually held
     * @param readings how many are usually taken
     */
    public record Rung(Ratio load, TimeSpan dwell, int readings) {
        private static Rung of(String load, String dwell, int readings) {
            return new Rung(Ratio.valueOf(load), TimeSpan.valueOf(dwell), readings);
        }
    }

    /** {@return the loads to be tried on a set} */
    public static List<Rung> rungs(CommissioningRecord record) {
        var rungs = new ArrayList<>(RUNGS);
        if (Optional.ofNullable(record.getGeneratorSet()).map(GeneratorSet::getOverloadDeclared).filter(Answer.YES::equals).isPresent()) {
            rungs.add(OVERLOAD);
        }
        return List.copyOf(rungs);
    }

    /** {@return what is usual for a step, where its load is one of the ladder} The overload counts, declared or not. */
    public static Optional<Rung> usual(LoadStep step) {
        var all = new ArrayList<>(RUNGS);
        all.add(OVERLOAD);
        return Optional.ofNullable(step.getLoad()).flatMap(load -> all.stream().filter(rung -> same(rung, load)).findFirst());
    }

    /** {@return the loads that have no step yet} */
    public static List<Rung> missing(CommissioningRecord record) {
        return rungs(record).stream().filter(rung -> steps(record).stream()
            .noneMatch(step -> step.getLoad() != null && same(rung, step.getLoad()))).toList();
    }

    /** Makes a step for each load that has none, in the order of the loads. What is there already stays. */
    public static void make(OpenRecord open, String label) {
        open.edits().together(label, () -> missing(open.record()).forEach(rung -> {
            LoadStep step = GarboardFactory.eINSTANCE.createLoadStep();
            step.setLoad(rung.load());
            if (open.record().getTrial() == null) {
                open.edits().add(open.record(), List.of(Literals.COMMISSIONING_RECORD__TRIAL, Literals.TRIAL__LOAD_STEPS), step, label);
            } else {
                open.edits().insert(open.record().getTrial(), Literals.TRIAL__LOAD_STEPS, place(rung, open.record()), step, label);
            }
        }));
    }

    /** Behind the last step with a smaller load, so that a step taken down again after full load stays behind it. */
    private static int place(Rung rung, CommissioningRecord record) {
        List<LoadStep> steps = steps(record);
        for (int index = 0; index < steps.size(); index++) {
            if (steps.get(index).getLoad() != null && steps.get(index).getLoad().isMoreThan(rung.load())) {
                return index;
            }
        }
        return steps.size();
    }

    private static boolean same(Rung rung, Ratio load) {
        return Math.abs(rung.load().si() - load.si()) < SAME_LOAD;
    }

    static List<LoadStep> steps(CommissioningRecord record) {
        return Optional.ofNullable(record.getTrial()).map(Trial::getLoadSteps).<List<LoadStep>>map(List::copyOf).orElse(List.of());
    }
}
