// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardPackage.Literals;
import garboard.model.RecordPath;

/**
 * What one edit, undo or redo touched.
 *
 * @param touched each field that has a new content, in the order in which they were touched; a list or a part when something was added to
 *     it or taken away
 * @param unread the keys of fields whose unreadable text came, changed or went
 */
public record RecordChange(Set<Touched> touched, Set<String> unread) {

    /** One field of one part. */
    public record Touched(EObject owner, EStructuralFeature feature) {
    }

    public RecordChange {
        touched = Collections.unmodifiableSet(new LinkedHashSet<>(touched));
        unread = Collections.unmodifiableSet(new LinkedHashSet<>(unread));
    }

    /**
     * {@return whether parts or items came, went or moved, so that more than single values must be shown anew} Texts that cannot be read
     * come and go without that.
     */
    public boolean structural() {
        return touched.stream().anyMatch(one -> one.feature() instanceof EReference && one.feature() != Literals.COMMISSIONING_RECORD__UNREAD_ENTRIES);
    }

    /** {@return the features that were touched, whatever part they are of} */
    public Set<EStructuralFeature> features() {
        var features = new LinkedHashSet<EStructuralFeature>();
        touched.forEach(one -> features.add(one.feature()));
        return features;
    }

    /** {@return whether a field has, or may have, a new content} */
    public boolean concerns(Field field) {
        return structural() || touched.stream().anyMatch(one -> field.isPlace(one.owner(), one.feature()))
            || !unread.isEmpty() && unread.contains(field.key());
    }

    /**
     * {@return the key of the first place where a person sees what changed} Nothing for what is not filled in at a place, such as an
     * acceptance.
     */
    public Optional<String> place() {
        return touched.stream().filter(RecordChange::isSeen).findFirst().map(one -> RecordPath.key(one.owner(), one.feature()))
            .or(() -> unread.stream().findFirst());
    }

    private static boolean isSeen(Touched one) {
        return EcoreUtil.getRootContainer(one.owner()) instanceof CommissioningRecord && one.feature() != Literals.ITEM__ID
            && one.feature() != Literals.COMMISSIONING_RECORD__UNREAD_ENTRIES && one.owner().eClass() != Literals.UNREAD_ENTRY
            && one.feature() != Literals.COMMISSIONING_RECORD__ACCEPTANCES && one.owner().eClass() != Literals.ACCEPTANCE;
    }
}
