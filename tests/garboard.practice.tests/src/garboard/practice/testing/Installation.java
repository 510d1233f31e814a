// SPDX-License-Identifier: EPL-2.0
package garboard.practice.testing;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;

/** A record in which every part that an installation has once is there and nothing is entered. */
public final class Installation {

    private Installation() {
    }

    /** All single parts created, to any depth; all lists empty; every feature unset. */
    public static CommissioningRecord empty() {
        CommissioningRecord record = GarboardFactory.eINSTANCE.createCommissioningRecord();
        fill(record);
        return record;
    }

    /** Creates the single parts below an object, as for an element that a test adds to a list. */
    public static <T extends EObject> T fill(T owner) {
        for (EReference reference : owner.eClass().getEAllContainments()) {
            if (!reference.isMany()) {
                EObject part = GarboardFactory.eINSTANCE.create(reference.getEReferenceType());
                owner.eSet(reference, part);
                fill(part);
            }
        }
        return owner;
    }
}
