// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.model.CommissioningRecord;
import garboard.model.Labels;
import garboard.model.RecordPath;

/**
 * A place that a key names, whether a part, a list or a field, and also one below parts that do not exist yet.
 *
 * @param anchor the lowest part on the way that exists
 * @param path from the anchor to the place: single parts, then anything; empty when the place is the anchor itself
 */
public record RecordKey(EObject anchor, List<EStructuralFeature> path) {

    /** Between the steps of a key; a dot inside brackets belongs to the id of an item. */
    private static final Pattern DOT = Pattern.compile("\\.(?![^\\[]*\\])");

    public RecordKey {
        path = List.copyOf(path);
    }

    /** {@return the place that a key names; nothing when the key is malformed or names an item that is not there} */
    public static Optional<RecordKey> of(CommissioningRecord record, String key) {
        List<String> steps = key.isEmpty() ? List.of() : Arrays.asList(DOT.split(key, -1));
        for (int cut = steps.size(); cut >= 0; cut--) {
            Optional<EObject> anchor = RecordPath.part(record, String.join(".", steps.subList(0, cut)));
            if (anchor.isPresent()) {
                return below(anchor.get(), steps.subList(cut, steps.size()));
            }
        }
        return Optional.empty();
    }

    private static Optional<RecordKey> below(EObject anchor, List<String> steps) {
        var path = new ArrayList<EStructuralFeature>();
        EClass type = anchor.eClass();
        for (int index = 0; index < steps.size(); index++) {
            EStructuralFeature feature = type.getEStructuralFeature(steps.get(index));
            if (feature == null) {
                return Optional.empty();
            }
            path.add(feature);
            if (index < steps.size() - 1) {
                if (!(feature instanceof EReference reference) || reference.isMany() || !reference.isContainment()) {
                    return Optional.empty();
                }
                type = reference.getEReferenceType();
            }
        }
        return Optional.of(new RecordKey(anchor, path));
    }

    /** {@return the place as a field to fill in; nothing when it is a part or a list} */
    public Optional<Field> field() {
        return path.isEmpty() || !(path.getLast() instanceof EAttribute) ? Optional.empty() : Optional.of(new Field(anchor, path));
    }

    /** {@return the place in words} */
    public String words(Labels labels) {
        return path.isEmpty() ? RecordPath.words(anchor, labels) : RecordPath.words(anchor, path, labels);
    }
}
