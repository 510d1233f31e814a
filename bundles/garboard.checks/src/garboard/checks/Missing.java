// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import java.util.Objects;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * An input that a check needs and that is not entered.
 *
 * @param owner the nearest existing object below which it would be entered
 * @param feature the feature of {@code owner} that is not set (which may be a whole part of the installation)
 * @param key stable path from the record, for example {@code rawWater.siphonBreak.ventSeat.z}
 * @param label the same in words
 */
public record Missing(EObject owner, EStructuralFeature feature, String key, String label) {
    public Missing {
        Objects.requireNonNull(owner, "owner");
        Objects.requireNonNull(feature, "feature");
    }
}
