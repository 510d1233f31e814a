// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import garboard.model.CommissioningRecord;
import garboard.model.FieldText;
import garboard.model.GarboardFactory;
import garboard.model.Item;

/**
 * Makes a record from lines such as {@code rawWater.hoses[hose-1].bore = 25 mm}: each step names a feature, an element of a list by
 * its id; what is not there is made.
 */
final class RecordScript {

    private static final Pattern STEP = Pattern.compile("([A-Za-z0-9]+)(?:\\[([^\\]]+)])?");

    private RecordScript() {
    }

    static CommissioningRecord record(String script) {
        CommissioningRecord record = GarboardFactory.eINSTANCE.createCommissioningRecord();
        script.lines().map(String::strip).filter(line -> !line.isEmpty() && !line.startsWith("#")).forEach(line -> enter(record, line));
        return record;
    }

    private static void enter(EObject record, String line) {
        String[] sides = line.split("\\s*=\\s*", 2);
        String[] steps = sides[0].split("\\.");
        EObject owner = record;
        for (int index = 0; index < steps.length - 1; index++) {
            owner = step(owner, steps[index]);
        }
        EStructuralFeature feature = owner.eClass().getEStructuralFeature(steps[steps.length - 1]);
        if (!(feature instanceof EAttribute attribute)) {
            throw new IllegalArgumentException(line);
        }
        Object value = FieldText.value(attribute.getEAttributeType(), sides[1].replace("\\n", "\n")).orElseThrow();
        if (attribute.isMany()) {
            add(owner, attribute, value);
        } else {
            owner.eSet(attribute, value);
        }
    }

    @SuppressWarnings("unchecked")
    private static void add(EObject owner, EStructuralFeature feature, Object value) {
        ((List<Object>) owner.eGet(feature)).add(value);
    }

    private static EObject step(EObject owner, String step) {
        Matcher matcher = STEP.matcher(step);
        if (!matcher.matches() || !(owner.eClass().getEStructuralFeature(matcher.group(1)) instanceof EReference reference)) {
            throw new IllegalArgumentException(step);
        }
        if (!reference.isMany()) {
            if (!owner.eIsSet(reference)) {
                owner.eSet(reference, EcoreUtil.create(reference.getEReferenceType()));
            }
            return (EObject) owner.eGet(reference);
        }
        for (Object element : (List<?>) owner.eGet(reference)) {
            if (matcher.group(2).equals(((Item) element).getId())) {
                return (EObject) element;
            }
        }
        Item made = (Item) EcoreUtil.create(reference.getEReferenceType());
        made.setId(matcher.group(2));
        add(owner, reference, made);
        return made;
    }
}
