// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EContentAdapter;

import garboard.model.GarboardPackage.Literals;

/** Collects what is touched in a record, until it is told. */
final class ChangeWatch extends EContentAdapter {

    private final Set<RecordChange.Touched> touched = new LinkedHashSet<>();
    private final Set<String> unread = new LinkedHashSet<>();

    @Override
    public void notifyChanged(Notification notification) {
        super.notifyChanged(notification);
        if (!notification.isTouch() && notification.getNotifier() instanceof EObject owner
                && notification.getFeature() instanceof EStructuralFeature feature) {
            touched.add(new RecordChange.Touched(owner, feature));
            if (feature == Literals.COMMISSIONING_RECORD__UNREAD_ENTRIES) {
                unread.addAll(Unread.places(notification.getOldValue()));
                unread.addAll(Unread.places(notification.getNewValue()));
            }
        }
    }

    /** {@return what was touched since this was asked last, if anything was} */
    Optional<RecordChange> take() {
        if (touched.isEmpty()) {
            return Optional.empty();
        }
        var change = new RecordChange(touched, unread);
        touched.clear();
        unread.clear();
        return Optional.of(change);
    }
}
