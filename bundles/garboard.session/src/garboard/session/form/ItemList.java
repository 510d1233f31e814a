// SPDX-License-Identifier: EPL-2.0
package garboard.session.form;

import java.util.List;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

import garboard.model.GarboardPackage.Literals;
import garboard.model.RecordPath;
import garboard.session.Edits;

/**
 * A list of a record, which need not exist yet: its items, and what can be done with them, each as one step to undo.
 *
 * @param anchor an existing part: the record itself, or an item of a list
 * @param path from the anchor to the list, over single parts
 */
public record ItemList(Edits edits, EObject anchor, List<EReference> path) {

    public ItemList {
        path = List.copyOf(path);
        if (!path.getLast().isMany() || path.stream().limit(path.size() - 1).anyMatch(EReference::isMany)) {
            throw new IllegalArgumentException("The way to a list leads over single parts to many items");
        }
    }

    /** {@return the class of the items} */
    public EClass type() {
        return path.getLast().getEReferenceType();
    }

    /** {@return the key of the list, as verdicts use it} */
    public String key() {
        return RecordPath.key(anchor, path);
    }

    /** {@return the items as they stand now} */
    public List<EObject> items() {
        EObject owner = anchor;
        for (EReference step : path.subList(0, path.size() - 1)) {
            owner = (EObject) owner.eGet(step);
            if (owner == null) {
                return List.of();
            }
        }
        @SuppressWarnings("unchecked") // a list of the model holds objects of the model
        var items = (List<EObject>) owner.eGet(path.getLast());
        return List.copyOf(items);
    }

    /** Appends an item. @return it, with its id */
    public EObject add(EObject item, String label) {
        return edits.add(anchor, path, item, label);
    }

    /** Puts a copy of an item, with all that belongs to it, behind it. @return the copy */
    public EObject duplicate(EObject item, String label) {
        EObject copy = EcoreUtil.copy(item);
        // The copy gets ids of its own: an acceptance that speaks of the first by its id does not speak of the second.
        copy.eUnset(Literals.ITEM__ID);
        copy.eAllContents().forEachRemaining(part -> {
            if (Literals.ITEM.isSuperTypeOf(part.eClass())) {
                part.eUnset(Literals.ITEM__ID);
            }
        });
        int behind = items().indexOf(item) + 1;
        edits.together(label, () -> {
            edits.add(anchor, path, copy, label);
            if (behind < items().size() - 1) {
                edits.move(copy, behind, label);
            }
        });
        return copy;
    }

    /** Takes an item out. */
    public void remove(EObject item, String label) {
        edits.remove(List.of(item), label);
    }

    /** Moves an item by some places. @return whether it could be moved so far */
    public boolean move(EObject item, int by, String label) {
        int to = items().indexOf(item) + by;
        if (by == 0 || to < 0 || to >= items().size()) {
            return false;
        }
        edits.move(item, to, label);
        return true;
    }
}
