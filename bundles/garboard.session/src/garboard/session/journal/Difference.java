// SPDX-License-Identifier: EPL-2.0
package garboard.session.journal;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * A place where two records differ.
 *
 * @param owner the part that has the field, of the newer record where it is there, else of the older
 * @param before what was entered; nothing when nothing was
 * @param now what is entered; nothing when nothing is
 */
public record Difference(EObject owner, EStructuralFeature feature, Optional<Object> before, Optional<Object> now) {
}
