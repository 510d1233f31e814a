// SPDX-License-Identifier: EPL-2.0
package garboard.model;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Whether something has been entered in a record. A choice that stands at its first literal has not. */
public final class Entered {

    private Entered() {
    }

    /** {@return whether a field of a part is entered; a part below counts when it is there, whatever it holds} */
    public static boolean isEntered(EObject owner, EStructuralFeature feature) {
        return owner.eIsSet(feature);
    }

    /** {@return whether anything at all is entered in a part or below it; the id of an item is not something entered} */
    public static boolean anythingIn(EObject part) {
        return part.eClass().getEAllStructuralFeatures().stream().anyMatch(feature -> anythingIn(part, feature));
    }

    /** {@return whether anything is entered in a field: a value, or something in the parts that it holds} */
    public static boolean anythingIn(EObject owner, EStructuralFeature feature) {
        if (feature == GarboardPackage.Literals.ITEM__ID || !owner.eIsSet(feature)) {
            return false;
        }
        if (feature instanceof EReference reference && reference.isContainment()) {
            return RecordPath.parts(owner, reference).stream().anyMatch(Entered::anythingIn);
        }
        return true;
    }
}
