// SPDX-License-Identifier: EPL-2.0
package garboard.session.form;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.session.Field;
import garboard.session.FieldStandings;
import garboard.session.OpenRecord;

/**
 * How far a group of the record is filled in.
 *
 * @param fields how many fields it has, lists left out
 * @param entered how many of them are entered, or hold something that could not be read
 * @param items how many items its lists have
 * @param beside how many of those that are not entered no check asks of this installation
 * @param shut whether it is better closed at first: nothing is entered, and it is seldom wanted or beside the matter
 */
public record GroupState(int fields, int entered, int items, int beside, boolean shut) {

    /** {@return how a group of the record stands now} */
    public static GroupState of(FormGroup group, OpenRecord open) {
        int fields = 0;
        int entered = 0;
        int items = 0;
        int beside = 0;
        for (FormEntry entry : group.entries()) {
            if (entry instanceof FormEntry.Items list) {
                items += items(open.record(), list.path());
                continue;
            }
            for (List<? extends EStructuralFeature> path : entry.paths()) {
                var field = new Field(open.record(), List.copyOf(path));
                fields++;
                if (field.value().isPresent() || open.edits().unread(field).isPresent()) {
                    entered++;
                } else if (open.verdicts().byField().isBeside(field)) {
                    beside++;
                }
            }
        }
        boolean lists = group.entries().stream().anyMatch(FormEntry.Items.class::isInstance);
        boolean nothing = entered == 0 && items == 0;
        return new GroupState(fields, entered, items, beside, nothing && (group.shut() || !lists && fields > 0 && beside == fields));
    }

    private static int items(EObject anchor, List<EReference> path) {
        EObject owner = anchor;
        for (EReference step : path.subList(0, path.size() - 1)) {
            owner = (EObject) owner.eGet(step);
            if (owner == null) {
                return 0;
            }
        }
        return ((List<?>) owner.eGet(path.getLast())).size();
    }
}
