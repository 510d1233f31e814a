// SPDX-License-Identifier: EPL-2.0
package garboard.model;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Whether two records say the same: the same fields entered with the same values, the same parts in the same order, cross references
 * to the same places. Quantities compare as given, with number, unit and accuracy. Content that this version of the program does not
 * know is left out of account.
 */
public final class Records {

    private Records() {
    }

    /** {@return whether two records, or two parts of one class, say the same} */
    public static boolean equal(EObject one, EObject other) {
        return firstDifference(one, other).isEmpty();
    }

    /** {@return the first place where two records or parts differ, and how, for example {@code rawWater.hoses[hose-2].bore: 1 in against 25 mm}} */
    public static Optional<String> firstDifference(EObject one, EObject other) {
        if (one.eClass() != other.eClass()) {
            return difference(RecordPath.key(one), one.eClass().getName(), other.eClass().getName());
        }
        for (EStructuralFeature feature : one.eClass().getEAllStructuralFeatures()) {
            Optional<String> found = firstDifference(one, other, feature);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static Optional<String> firstDifference(EObject one, EObject other, EStructuralFeature feature) {
        if (!one.eIsSet(feature) && !other.eIsSet(feature)) {
            return Optional.empty();
        }
        if (one.eIsSet(feature) && other.eIsSet(feature)) {
            return feature instanceof EReference reference ? inParts(one, other, reference) : inValues(one, other, (EAttribute) feature);
        }
        return difference(RecordPath.key(one, feature), told(one, feature), told(other, feature));
    }

    private static Optional<String> inParts(EObject one, EObject other, EReference reference) {
        List<EObject> ones = RecordPath.parts(one, reference);
        List<EObject> others = RecordPath.parts(other, reference);
        if (ones.size() != others.size()) {
            return difference(RecordPath.key(one, reference), ones.size() + " of them", others.size() + " of them");
        }
        for (int i = 0; i < ones.size(); i++) {
            Optional<String> found = reference.isContainment() ? firstDifference(ones.get(i), others.get(i))
                : inTarget(RecordPath.key(one, reference), ones.get(i), others.get(i));
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static Optional<String> inTarget(String place, EObject one, EObject other) {
        String target = RecordPath.key(one);
        String otherTarget = RecordPath.key(other);
        return target.equals(otherTarget) ? Optional.empty() : difference(place, target, otherTarget);
    }

    private static Optional<String> inValues(EObject one, EObject other, EAttribute attribute) {
        Object value = one.eGet(attribute);
        Object otherValue = other.eGet(attribute);
        boolean same = value instanceof byte[] bytes && otherValue instanceof byte[] otherBytes ? Arrays.equals(bytes, otherBytes)
            : Objects.equals(value, otherValue);
        return same ? Optional.empty() : difference(RecordPath.key(one, attribute), told(one, attribute), told(other, attribute));
    }

    private static String told(EObject owner, EStructuralFeature feature) {
        if (!owner.eIsSet(feature)) {
            return "nothing entered";
        }
        Object value = owner.eGet(feature);
        return value instanceof byte[] bytes ? bytes.length + " bytes (" + Arrays.hashCode(bytes) + ")" : String.valueOf(value);
    }

    private static Optional<String> difference(String place, String one, String other) {
        return Optional.of((place.isEmpty() ? "the record" : place) + ": " + one + " against " + other);
    }
}
