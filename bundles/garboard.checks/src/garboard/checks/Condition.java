// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;

import org.eclipse.emf.ecore.EObject;

/**
 * When a check applies: what must be known to decide it, the decision, and the reason given when it does not apply.
 *
 * @param <S> the subject's class
 * @param inWords when it applies, as the catalogue prints it: "gasoline sets"
 * @param needs inputs without which it cannot be decided
 * @param uses inputs that it takes into account where they are entered
 * @param test the decision; called only when every needed input is entered
 * @param reasonIfNot why the check does not apply, as a sentence: "the set burns diesel"
 */
public record Condition<S extends EObject>(String inWords, List<FeaturePath> needs, List<FeaturePath> uses,
        Predicate<Situation<? extends S>> test, String reasonIfNot) {

    public Condition {
        Objects.requireNonNull(inWords, "inWords");
        needs = List.copyOf(needs);
        uses = List.copyOf(uses);
        Objects.requireNonNull(test, "test");
        Objects.requireNonNull(reasonIfNot, "reasonIfNot");
    }

    /** Named steps, so that the two texts cannot be swapped unseen. */
    public static <S extends EObject> Start<S> when(String inWords) {
        return new Start<>(inWords);
    }

    /** First step: what must be known. */
    public record Start<S extends EObject>(String inWords) {
        public Decision<S> known(FeaturePath... needs) {
            return new Decision<>(inWords, List.of(needs), List.of());
        }
    }

    /** Second step: the decision and the reason. */
    public record Decision<S extends EObject>(String inWords, List<FeaturePath> needs, List<FeaturePath> uses) {

        /** Inputs that can turn the decision where they are entered, and without which it is decided all the same. */
        public Decision<S> uses(FeaturePath... uses) {
            return new Decision<>(inWords, needs, List.of(uses));
        }

        public Condition<S> test(Predicate<Situation<? extends S>> test, String reasonIfNot) {
            return new Condition<>(inWords, needs, uses, test, reasonIfNot);
        }
    }
}
