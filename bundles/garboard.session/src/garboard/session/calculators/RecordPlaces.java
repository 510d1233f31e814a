// SPDX-License-Identifier: EPL-2.0
package garboard.session.calculators;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardPackage.Literals;
import garboard.session.Field;

/** All fields of a record: of the parts that it has, of single parts that it does not have yet, and of the items in its lists. */
final class RecordPlaces {

    /** What is signed, accepted or only looked at is no place for figures. */
    private static final Set<EClass> NOT_FOR_FIGURES = Set.of(Literals.SIGNATURE, Literals.ACCEPTANCE, Literals.REVISION, Literals.PHOTOGRAPH,
        Literals.UNREAD_ENTRY, Literals.INSPECTION_ANSWER, Literals.PARTY);

    private final List<Field> fields = new ArrayList<>();

    private RecordPlaces() {
    }

    static List<Field> of(CommissioningRecord record) {
        var places = new RecordPlaces();
        places.addPart(record);
        return places.fields;
    }

    private void addPart(EObject part) {
        for (EStructuralFeature feature : part.eClass().getEAllStructuralFeatures()) {
            if (feature instanceof EAttribute attribute) {
                fields.add(Field.of(part, attribute));
            } else if (feature instanceof EReference reference && isWay(reference)) {
                if (reference.isMany()) {
                    ((List<?>) part.eGet(reference)).forEach(item -> addPart((EObject) item));
                } else if (part.eGet(reference) instanceof EObject below) {
                    addPart(below);
                } else {
                    addMissing(part, List.of(reference));
                }
            }
        }
    }

    private void addMissing(EObject anchor, List<EReference> way) {
        for (EStructuralFeature feature : way.getLast().getEReferenceType().getEAllStructuralFeatures()) {
            List<EStructuralFeature> path = new ArrayList<>(way);
            path.add(feature);
            if (feature instanceof EAttribute) {
                fields.add(new Field(anchor, path));
            } else if (feature instanceof EReference reference && isWay(reference) && !reference.isMany()) {
                List<EReference> further = new ArrayList<>(way);
                further.add(reference);
                addMissing(anchor, further);
            }
        }
    }

    private static boolean isWay(EReference reference) {
        return reference.isContainment() && !NOT_FOR_FIGURES.contains(reference.getEReferenceType());
    }
}
