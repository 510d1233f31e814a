// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.eclipse.emf.common.notify.impl.AdapterImpl;
import org.eclipse.emf.ecore.util.EcoreUtil;

import garboard.model.CommissioningRecord;

/**
 * The highest number that ids of a record have had, by their word: hose 7, cable 12. Hangs on the record, so that the id of a deleted
 * item is not given again as long as the record is open; what the record itself no longer shows is written into its file.
 */
final class IdLedger extends AdapterImpl {

    private static final Pattern NUMBERED = Pattern.compile("(.+)-([1-9][0-9]{0,8})");

    private final Map<String, Integer> highest = new TreeMap<>();

    /** {@return the ledger of a record, a new one when it has none} */
    static IdLedger of(CommissioningRecord record) {
        if (EcoreUtil.getExistingAdapter(record, IdLedger.class) instanceof IdLedger there) {
            return there;
        }
        IdLedger ledger = new IdLedger();
        record.eAdapters().add(ledger);
        return ledger;
    }

    /** Takes note of an id that is or was in use. */
    void note(String id) {
        Matcher numbered = NUMBERED.matcher(id);
        if (Items.isId(id) && numbered.matches()) {
            highest.merge(numbered.group(1), Integer.valueOf(numbered.group(2)), Math::max);
        }
    }

    /** Takes note of all that another ledger knows. */
    void noteAll(IdLedger other) {
        other.highest.forEach((word, number) -> highest.merge(word, number, Math::max));
    }

    /** {@return an id with this word that has never been in use, now in use} */
    String next(String word) {
        return word + "-" + highest.merge(word, 1, Integer::sum);
    }

    /** {@return the numbers that the ids in use do not show, as {@code cable-12 hose-7}, empty when there are none} */
    String beyond(Iterable<String> idsInUse) {
        IdLedger shown = new IdLedger();
        idsInUse.forEach(shown::note);
        return highest.entrySet().stream()
            .filter(entry -> entry.getValue() > shown.highest.getOrDefault(entry.getKey(), 0))
            .map(entry -> entry.getKey() + "-" + entry.getValue())
            .collect(Collectors.joining(" "));
    }

    @Override
    public boolean isAdapterForType(Object type) {
        return type == IdLedger.class;
    }
}
