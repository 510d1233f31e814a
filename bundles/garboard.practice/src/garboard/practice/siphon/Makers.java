// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import java.util.function.Function;

import org.eclipse.emf.ecore.EObject;

import garboard.checks.Condition;
import garboard.model.MakerLimits;

/** Conditions on what the set's maker says. */
final class Makers {

    private Makers() {
    }

    /** Advice by common practice that has nothing to add once the maker has named a figure. The check declares the figure as used. */
    static Condition<EObject> silent(Function<MakerLimits, ?> figure, String reasonIfNot) {
        return Condition.when("where the maker names no figure").known().test(s -> s.maker(figure).isEmpty(), reasonIfNot);
    }
}
