// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import java.util.List;
import java.util.Locale;

import org.eclipse.emf.ecore.EObject;

import garboard.model.Labels;

/**
 * When a finer check steps back because a graver one of the same subject falls short already: one shortfall is told once, in its graver form.
 */
public final class SteppingBack {

    private SteppingBack() {
    }

    /**
     * The finer check applies unless this one falls short on the same subject. Whether somebody has accepted that shortfall makes no difference.
     *
     * @param graver a check of the same class of subjects
     */
    public static <S extends EObject> Condition<S> where(Check<S> graver) {
        return new Condition<>("unless " + graver.id() + " falls short already", List.of(), List.copyOf(graver.inputs()), s -> !fallsShort(graver, s),
            "left to " + graver.id() + ", which falls short already");
    }

    private static boolean fallsShort(Check<?> graver, Situation<?> s) {
        return graver.judges(s.subject()) && Engine.JUDGE.judge(graver, s.subject(), s.record(), s.today()).standing() == Standing.FALLS_SHORT;
    }

    /** Reads the model's containment once, when the first condition is asked. */
    private static final class Engine {
        private static final Judge JUDGE = new Judge(new Containment(), Labels.in(Locale.ENGLISH));
    }
}
