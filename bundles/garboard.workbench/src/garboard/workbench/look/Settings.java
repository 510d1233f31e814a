// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.look;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.osgi.service.prefs.BackingStoreException;

import garboard.quantity.UnitSystem;
import garboard.report.Paper;
import garboard.session.Listeners;

/** What a person set for all records: units, paper, language, light or dark. Kept in the user's folder. */
public final class Settings {

    /** Light or dark, or as the desktop is. */
    public enum Shade {
        AS_DESKTOP, LIGHT, DARK
    }

    private final IEclipsePreferences store;
    private final Listeners<Settings> listeners = new Listeners<>();

    public Settings(IEclipsePreferences store) {
        this.store = store;
    }

    public UnitSystem units() {
        return choice("units", UnitSystem.SI);
    }

    public Paper paper() {
        return choice("paper", Paper.A4);
    }

    public Shade shade() {
        return choice("shade", Shade.AS_DESKTOP);
    }

    /** {@return the language of the window: as set, else that of the machine when there is a translation, else English} */
    public Locale language() {
        String set = store.get("language", "");
        String wanted = set.isEmpty() ? Locale.getDefault().getLanguage() : set;
        return "de".equals(wanted) ? Locale.GERMAN : Locale.ENGLISH;
    }

    /** {@return the language as set, empty for that of the machine} */
    public String languageSet() {
        return store.get("language", "");
    }

    public void setUnits(UnitSystem units) {
        put("units", units.name());
    }

    public void setPaper(Paper paper) {
        put("paper", paper.name());
    }

    public void setShade(Shade shade) {
        put("shade", shade.name());
    }

    /** @param language {@code en}, {@code de}, or empty for that of the machine; holds from the next start on */
    public void setLanguage(String language) {
        put("language", language);
    }

    /** {@return who accepted a shortfall last, to be proposed the next time; empty when nobody did} */
    public String acceptor() {
        return store.get("acceptor", "");
    }

    /** Remembers who accepted a shortfall. It concerns nobody else, so nobody is told. */
    public void rememberAcceptor(String name) {
        keep("acceptor", name);
    }

    /** {@return whether a person left a group of fields open or closed, where they ever did} */
    public Optional<Boolean> leftOpen(String group) {
        return Optional.ofNullable(store.get("open." + group, null)).map(Boolean::valueOf);
    }

    /** Remembers that a group of fields was opened or closed. It concerns nobody else, so nobody is told. */
    public void leaveOpen(String group, boolean open) {
        keep("open." + group, String.valueOf(open));
    }

    /** {@return which views of the drawings a person chose at which stop, as they were written; empty when none} */
    public String views() {
        return store.get("views", "");
    }

    /** Remembers the views of the drawings. It concerns nobody else, so nobody is told. */
    public void rememberViews(String written) {
        keep("views", written);
    }

    public Listeners.Subscription onChange(Consumer<? super Settings> listener) {
        return listeners.add(listener);
    }

    private <E extends Enum<E>> E choice(String key, E usual) {
        String stored = store.get(key, usual.name());
        for (E value : usual.getDeclaringClass().getEnumConstants()) {
            if (value.name().equals(stored)) {
                return value;
            }
        }
        return usual;
    }

    private void put(String key, String value) {
        keep(key, value);
        listeners.tell(this);
    }

    /** Writes it at once: nothing writes the store when the window closes. */
    private void keep(String key, String value) {
        store.put(key, value);
        try {
            store.flush();
        } catch (BackingStoreException cannot) {
            // It holds for this run; the next start has the old setting, which does no harm.
            System.getLogger(Settings.class.getName()).log(System.Logger.Level.WARNING, "Setting not kept: " + key, cannot);
        }
    }
}
