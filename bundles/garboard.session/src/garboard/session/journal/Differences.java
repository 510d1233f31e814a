// SPDX-License-Identifier: EPL-2.0
package garboard.session.journal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardPackage.Literals;
import garboard.model.Item;
import garboard.model.RecordPath;
import garboard.model.UnreadEntry;

/** All places where two records differ, field by field, in the order of the model. Items of a list are the same when their ids are. */
public final class Differences {

    private final List<Difference> found = new ArrayList<>();

    private Differences() {
    }

    /** {@return what was entered, changed or emptied from one record to the other} */
    public static List<Difference> between(CommissioningRecord before, CommissioningRecord now) {
        var differences = new Differences();
        differences.compare(Optional.of(before), Optional.of(now));
        return List.copyOf(differences.found);
    }

    private void compare(Optional<EObject> before, Optional<EObject> now) {
        EObject shape = now.or(() -> before).orElseThrow();
        for (EStructuralFeature feature : shape.eClass().getEAllStructuralFeatures()) {
            if (feature == Literals.ITEM__ID || feature == Literals.COMMISSIONING_RECORD__FORMAT_VERSION) {
                continue;
            }
            if (feature instanceof EReference reference && reference.isContainment()) {
                parts(before, now, reference);
            } else {
                values(shape, before.flatMap(part -> value(part, feature)), now.flatMap(part -> value(part, feature)), feature);
            }
        }
    }

    private void parts(Optional<EObject> before, Optional<EObject> now, EReference reference) {
        Map<String, EObject> older = before.map(owner -> below(owner, reference)).orElse(Map.of());
        Map<String, EObject> newer = now.map(owner -> below(owner, reference)).orElse(Map.of());
        newer.forEach((name, part) -> part(Optional.ofNullable(older.get(name)), Optional.of(part), reference));
        older.forEach((name, part) -> {
            if (!newer.containsKey(name)) {
                part(Optional.of(part), Optional.empty(), reference);
            }
        });
    }

    /** An item that came or went with nothing in it is a difference, too. */
    private void part(Optional<EObject> before, Optional<EObject> now, EReference reference) {
        int so = found.size();
        compare(before, now);
        boolean came = before.isEmpty() != now.isEmpty();
        if (came && reference.isMany() && found.size() == so) {
            found.add(new Difference(now.or(() -> before).orElseThrow().eContainer(), reference, before.map(Object.class::cast), now.map(Object.class::cast)));
        }
    }

    private void values(EObject owner, Optional<Object> before, Optional<Object> now, EStructuralFeature feature) {
        boolean same = before.isPresent() == now.isPresent() && before.map(value -> equal(value, now.orElseThrow())).orElse(true);
        if (!same) {
            found.add(new Difference(owner, feature, before, now));
        }
    }

    private static boolean equal(Object one, Object other) {
        return one instanceof byte[] bytes && other instanceof byte[] others ? Arrays.equals(bytes, others) : one.equals(other);
    }

    /** {@return what is entered; a reference as the key of the part to which it leads} */
    private static Optional<Object> value(EObject owner, EStructuralFeature feature) {
        if (!owner.eIsSet(feature)) {
            return Optional.empty();
        }
        Object value = owner.eGet(feature);
        if (feature instanceof EAttribute) {
            return Optional.of(value instanceof List<?> list ? List.copyOf(list) : value);
        }
        List<?> targets = value instanceof List<?> list ? list : List.of(value);
        return Optional.of(targets.stream().map(target -> RecordPath.key((EObject) target)).toList());
    }

    private static Map<String, EObject> below(EObject owner, EReference reference) {
        Object value = owner.eGet(reference);
        List<?> parts = value instanceof List<?> list ? list : value == null ? List.of() : List.of(value);
        var byName = new LinkedHashMap<String, EObject>();
        for (Object part : parts) {
            byName.put(name((EObject) part, byName.size()), (EObject) part);
        }
        return byName;
    }

    private static String name(EObject part, int index) {
        return part instanceof Item item && item.getId() != null ? item.getId()
            : part instanceof UnreadEntry entry && entry.getPlace() != null ? entry.getPlace() : "#" + index;
    }
}
