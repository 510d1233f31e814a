// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.Notifier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EContentAdapter;
import org.eclipse.emf.ecore.util.EcoreUtil;

import garboard.model.Acceptance;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardPackage.Literals;
import garboard.model.Item;
import garboard.model.StoredVerdict;

/**
 * The ids of the items in one record: readable ({@code hose-2}), unique in the record, never given twice, also not after the item
 * that had it was deleted. An acceptance or a signed verdict speaks of an item by its id, years later.
 */
public final class Items {

    /** A letter, then letters, digits and {@code - _ .}: what can stand in a list of references and in a key. */
    private static final Pattern ID = Pattern.compile("\\p{L}[\\p{L}\\p{M}\\p{N}_.-]*");
    private static final Pattern IN_BRACKETS = Pattern.compile("\\[([^\\[\\]]+)]");

    /** Fields that hold an id, or the key of a place with ids in it. */
    private static final Set<Object> SPEAK_OF_IDS = Set.of(Literals.ITEM__ID, Literals.ACCEPTANCE__SUBJECT, Literals.STORED_VERDICT__SUBJECT);

    private final CommissioningRecord record;
    private final IdLedger ledger;

    private Items(CommissioningRecord record) {
        this.record = record;
        this.ledger = IdLedger.of(record);
    }

    /** {@return the ids of a record} */
    public static Items of(CommissioningRecord record) {
        Items items = new Items(record);
        items.noteAll();
        return items;
    }

    /** {@return whether a text can be an id} */
    public static boolean isId(String text) {
        return ID.matcher(text).matches();
    }

    /** {@return the item with this id} */
    public Optional<Item> find(String id) {
        return all().stream().filter(item -> id.equals(item.getId())).findFirst();
    }

    /** {@return all items of the record, an item before those in it} */
    public List<Item> all() {
        List<Item> items = new ArrayList<>();
        for (Iterator<EObject> parts = record.eAllContents(); parts.hasNext();) {
            if (parts.next() instanceof Item item) {
                items.add(item);
            }
        }
        return items;
    }

    /**
     * Gives an id to every item of the record that has none, that has one which cannot be an id, or whose id another item before it has.
     *
     * @return a sentence for each id that was replaced; none for ids that were missing
     */
    public List<String> assign() {
        noteAll();
        List<String> replaced = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (Item item : all()) {
            String id = item.getId();
            if (id == null || !isId(id) || !taken.add(id)) {
                String fresh = ledger.next(ItemNames.word(item.eClass()));
                item.setId(fresh);
                taken.add(fresh);
                if (id != null && !id.isEmpty()) {
                    replaced.add(isId(id) ? "The id \"" + id + "\" was given to two items; the second is now " + fresh
                        : "\"" + id + "\" cannot be an id; the item is now " + fresh);
                }
            }
        }
        return replaced;
    }

    /** Gives an id to one item of the record that has none, or that came as a copy with the id of another. */
    public void identify(Item added) {
        noteAll();
        String id = added.getId();
        boolean taken = all().stream().anyMatch(other -> other != added && other.getId() != null && other.getId().equals(id));
        if (id == null || !isId(id) || taken) {
            added.setId(ledger.next(ItemNames.word(added.eClass())));
        }
    }

    /**
     * From now on gives every item that is added to the record an id at once, and a fresh one to a copy that comes with the id of an
     * item still there.
     *
     * @return what ends the watch when it is closed
     */
    public Watch watch() {
        Watch watch = new Watch();
        record.eAdapters().add(watch);
        return watch;
    }

    /**
     * Watches over a record until it is closed. It keeps its own account of the ids, since a signature brings hundreds of items at once and
     * looking through the record for each of them would take seconds.
     */
    public final class Watch extends EContentAdapter implements AutoCloseable {

        private final Map<String, Item> holders = new HashMap<>();
        private boolean started;

        private Watch() {
        }

        @Override
        protected void addAdapter(Notifier notifier) {
            super.addAdapter(notifier);
            if (started && notifier instanceof Item added && (added.getId() == null || !isId(added.getId()) || isTaken(added))) {
                added.setId(ledger.next(ItemNames.word(added.eClass())));
            }
            takeNote(notifier);
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            if (!change.isTouch() && SPEAK_OF_IDS.contains(change.getFeature())) {
                takeNote(change.getNotifier());
            }
        }

        private boolean isTaken(Item added) {
            Item holder = holders.get(added.getId());
            return holder != null && holder != added && added.getId().equals(holder.getId()) && EcoreUtil.isAncestor(record, holder);
        }

        private void takeNote(Object part) {
            if (part instanceof Item item && item.getId() != null) {
                ledger.note(item.getId());
                holders.put(item.getId(), item);
            }
            List<String> ids = new ArrayList<>();
            if (part instanceof Acceptance acceptance) {
                addIds(acceptance.getSubject(), ids);
            } else if (part instanceof StoredVerdict verdict) {
                addIds(verdict.getSubject(), ids);
            }
            ids.forEach(ledger::note);
        }

        @Override
        public void setTarget(Notifier target) {
            super.setTarget(target);
            started |= target == record;
        }

        @Override
        public void close() {
            record.eAdapters().remove(this);
        }
    }

    /** {@return the highest numbers ever given that the record does not show by itself, in the form {@link #remember} takes} */
    String forgotten() {
        List<String> shown = new ArrayList<>(mentioned());
        all().stream().map(Item::getId).filter(id -> id != null).forEach(shown::add);
        return ledger.beyond(shown);
    }

    /** Takes note of ids that were once given. */
    void remember(String ids) {
        for (String id : ids.split("\\s+")) {
            ledger.note(id);
        }
    }

    private void noteAll() {
        mentioned().forEach(ledger::note);
        all().stream().map(Item::getId).filter(id -> id != null).forEach(ledger::note);
    }

    /** Ids that acceptances and signed verdicts speak of; the items themselves may be gone. */
    private List<String> mentioned() {
        List<String> ids = new ArrayList<>();
        record.getAcceptances().stream().map(Acceptance::getSubject).forEach(subject -> addIds(subject, ids));
        record.getSignatures().stream().flatMap(signature -> signature.getVerdicts().stream()).map(StoredVerdict::getSubject)
            .forEach(subject -> addIds(subject, ids));
        return ids;
    }

    private static void addIds(String subject, List<String> ids) {
        if (subject != null) {
            for (Matcher bracket = IN_BRACKETS.matcher(subject); bracket.find();) {
                ids.add(bracket.group(1));
            }
        }
    }
}
