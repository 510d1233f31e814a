// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.model.RecordPath;

/**
 * A field of a record that a person can fill in, also while the part that it belongs to does not exist yet.
 *
 * @param anchor an existing part: the record itself, or an item of a list
 * @param path from the anchor to the field: single parts, then an attribute
 */
public record Field(EObject anchor, List<EStructuralFeature> path) {

    public Field {
        path = List.copyOf(path);
        if (!(path.getLast() instanceof EAttribute)) {
            throw new IllegalArgumentException("A field ends at an attribute, not at " + path.getLast().getName());
        }
        for (EStructuralFeature step : path.subList(0, path.size() - 1)) {
            if (!(step instanceof EReference reference) || reference.isMany() || !reference.isContainment()) {
                throw new IllegalArgumentException("The way to a field leads over single parts, not over " + step.getName());
            }
        }
    }

    /** {@return a field of a part that exists} */
    public static Field of(EObject owner, EAttribute attribute) {
        return new Field(owner, List.of(attribute));
    }

    /** {@return a field that may lie below parts that do not exist yet} */
    public static Field of(EObject anchor, EStructuralFeature... path) {
        return new Field(anchor, List.of(path));
    }

    public EAttribute attribute() {
        return (EAttribute) path.getLast();
    }

    /** {@return the part that has the field, when it exists} */
    public Optional<EObject> owner() {
        EObject owner = anchor;
        for (EStructuralFeature step : path.subList(0, path.size() - 1)) {
            owner = (EObject) owner.eGet(step);
            if (owner == null) {
                return Optional.empty();
            }
        }
        return Optional.of(owner);
    }

    /** {@return what is entered; nothing for a choice that stands at "not entered"} */
    public Optional<Object> value() {
        return owner().filter(owner -> owner.eIsSet(attribute())).map(owner -> owner.eGet(attribute()));
    }

    /** {@return the key of the field, as verdicts and unread entries use it: {@code rawWater.siphonBreak.ventSeat.z}} */
    public String key() {
        return RecordPath.key(anchor, path);
    }

    /** {@return how many steps of the way exist, so that the rest must be made} */
    int existing() {
        EObject owner = anchor;
        int steps = 0;
        for (EStructuralFeature step : path.subList(0, path.size() - 1)) {
            owner = (EObject) owner.eGet(step);
            if (owner == null) {
                break;
            }
            steps++;
        }
        return steps;
    }

    /** {@return the nearest part on the way that exists} */
    EObject nearest() {
        EObject owner = anchor;
        for (EStructuralFeature step : path.subList(0, existing())) {
            owner = (EObject) owner.eGet(step);
        }
        return owner;
    }

    /** {@return whether this is the field of a part, from wherever the way to it begins} */
    public boolean isPlace(EObject owner, EStructuralFeature feature) {
        return feature == attribute() && owner().filter(found -> found == owner).isPresent();
    }
}
