// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import garboard.model.LoadStep;
import garboard.model.Reading;
import garboard.quantity.TimeSpan;

/**
 * What a load step still lacks before anything can be said of it.
 *
 * @param lacks what, in the order in which one would mend it
 * @param usual what is usual at this load
 * @param readings how many readings it has with anything in them
 * @param untimed how many of them have no time
 * @param withoutInstrument how many of them do not say what they were read with
 * @param unsettled the temperatures that still move, or of which that is not known
 */
public record StepReview(List<Lack> lacks, Optional<LoadLadder.Rung> usual, int readings, int untimed, int withoutInstrument, List<Settling> unsettled) {

    /** At full load temperatures are judged, so they have to stand still; below it they need not. Common practice. */
    private static final double FULL = 0.995;

    /** One thing that is missing. */
    public enum Lack {
        LOAD, READINGS, FEW_READINGS, TIMES, DWELL, SHORT_DWELL, SETTLING_UNKNOWN, NOT_SETTLED, INSTRUMENTS
    }

    public boolean complete() {
        return lacks.isEmpty();
    }

    public static StepReview of(LoadStep step) {
        List<Reading> taken = step.getReadings().stream().filter(garboard.model.Entered::anythingIn).toList();
        Optional<LoadLadder.Rung> usual = LoadLadder.usual(step);
        int untimed = (int) taken.stream().filter(reading -> reading.getAt() == null).count();
        int withoutInstrument = (int) taken.stream().filter(reading -> reading.getInstruments() == null || reading.getInstruments().isBlank()).count();
        List<Settling> unsettled = Settling.of(step).stream().filter(one -> !one.settled()).toList();
        var lacks = new ArrayList<Lack>();
        note(step.getLoad() == null, Lack.LOAD, lacks);
        note(taken.isEmpty(), Lack.READINGS, lacks);
        note(!taken.isEmpty() && usual.filter(rung -> taken.size() < rung.readings()).isPresent(), Lack.FEW_READINGS, lacks);
        note(untimed > 0, Lack.TIMES, lacks);
        note(step.getDwell() == null, Lack.DWELL, lacks);
        note(usual.filter(rung -> shorter(step.getDwell(), rung.dwell())).isPresent(), Lack.SHORT_DWELL, lacks);
        boolean thermal = step.getLoad() == null || step.getLoad().si() > FULL;
        note(thermal && unsettled.stream().anyMatch(one -> one.change().isEmpty()), Lack.SETTLING_UNKNOWN, lacks);
        note(thermal && unsettled.stream().anyMatch(one -> one.change().isPresent()), Lack.NOT_SETTLED, lacks);
        note(withoutInstrument > 0, Lack.INSTRUMENTS, lacks);
        return new StepReview(List.copyOf(lacks), usual, taken.size(), untimed, withoutInstrument, unsettled);
    }

    private static boolean shorter(TimeSpan dwell, TimeSpan usual) {
        return dwell != null && dwell.isLessThan(usual);
    }

    private static void note(boolean lacking, Lack lack, List<Lack> lacks) {
        if (lacking) {
            lacks.add(lack);
        }
    }
}
