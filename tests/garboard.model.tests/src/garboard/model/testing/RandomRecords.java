// SPDX-License-Identifier: EPL-2.0
package garboard.model.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage;

/** Makes records with a share of everything entered, by reflection over the Ecore model. */
public final class RandomRecords {

    private static final int LONGEST_LIST = 3;

    private final Random random;
    private final RandomValues values;
    private final int perCentEntered;
    private int ids;

    /**
     * @param perCentEntered how many in a hundred of the fields and parts are entered
     */
    public RandomRecords(Random random, int perCentEntered) {
        this.random = random;
        this.values = new RandomValues(random);
        this.perCentEntered = perCentEntered;
    }

    /** {@return another random record} */
    public CommissioningRecord record() {
        CommissioningRecord record = GarboardFactory.eINSTANCE.createCommissioningRecord();
        fill(record);
        record.setFormatVersion("1.0");
        List<EObject> parts = new ArrayList<>();
        record.eAllContents().forEachRemaining(parts::add);
        parts.forEach(part -> refer(part, parts));
        return record;
    }

    private void fill(EObject owner) {
        for (EAttribute attribute : owner.eClass().getEAllAttributes()) {
            if (attribute == GarboardPackage.Literals.ITEM__ID) {
                giveId(owner);
            } else if (attribute.isMany()) {
                some().forEach(times -> list(owner, attribute).add(values.value(attribute.getEAttributeType())));
            } else if (entered()) {
                owner.eSet(attribute, values.value(attribute.getEAttributeType()));
            }
        }
        for (EReference reference : owner.eClass().getEAllContainments()) {
            if (reference.isMany()) {
                some().forEach(times -> list(owner, reference).add(part(reference)));
            } else if (entered()) {
                owner.eSet(reference, part(reference));
            }
        }
    }

    private EObject part(EReference reference) {
        EObject part = EcoreUtil.create(reference.getEReferenceType());
        fill(part);
        return part;
    }

    /** Half of the items have an id; it may be one that a person thought of. */
    private void giveId(EObject item) {
        if (random.nextBoolean()) {
            item.eSet(GarboardPackage.Literals.ITEM__ID, (random.nextBoolean() ? "hose-" : "Stb_Größe.") + ++ids);
        }
    }

    private void refer(EObject owner, List<EObject> parts) {
        for (EReference reference : owner.eClass().getEAllReferences()) {
            if (!reference.isContainment() && entered()) {
                List<EObject> targets = parts.stream().filter(reference.getEReferenceType()::isInstance).toList();
                if (!targets.isEmpty()) {
                    some().forEach(times -> list(owner, reference).add(targets.get(random.nextInt(targets.size()))));
                }
            }
        }
    }

    private boolean entered() {
        return random.nextInt(100) < perCentEntered;
    }

    private List<Integer> some() {
        int length = entered() ? random.nextInt(LONGEST_LIST + 1) : 0;
        return java.util.stream.IntStream.range(0, length).boxed().toList();
    }

    @SuppressWarnings("unchecked") // a many-valued feature holds a list
    private static List<Object> list(EObject owner, org.eclipse.emf.ecore.EStructuralFeature feature) {
        return (List<Object>) owner.eGet(feature);
    }
}
