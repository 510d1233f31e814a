// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

import garboard.model.GarboardPackage.Literals;
import garboard.model.Instrument;
import garboard.model.Reading;
import garboard.session.Field;
import garboard.session.OpenRecord;
import garboard.workbench.Desk;

/** The instruments of the record, to be ticked for a reading. What else was written there stays. */
final class InstrumentsMenu {

    private InstrumentsMenu() {
    }

    static void open(Button from, OpenRecord record, Desk desk, Reading reading) {
        var texts = desk.texts(InstrumentsMenu.class);
        var menu = new Menu(from);
        if (record.record().getInstruments().isEmpty()) {
            var item = new MenuItem(menu, SWT.PUSH);
            item.setText(texts.get("load.instruments.none"));
            item.addListener(SWT.Selection, event -> desk.goTo("instruments"));
        }
        for (Instrument instrument : record.record().getInstruments()) {
            var item = new MenuItem(menu, SWT.CHECK);
            String name = Optional.ofNullable(instrument.getName()).orElse(instrument.getId());
            item.setText((instrument.getMeasures() == null ? name : name + " (" + instrument.getMeasures() + ")").replace("&", "&&"));
            item.setSelection(told(reading).contains(instrument.getId()));
            item.addListener(SWT.Selection, event -> tick(record, reading, instrument, item.getSelection(), texts.get("load.instruments.undo")));
        }
        menu.addListener(SWT.Hide, event -> menu.getDisplay().asyncExec(menu::dispose));
        menu.setLocation(from.toDisplay(0, from.getSize().y));
        menu.setVisible(true);
    }

    private static List<String> told(Reading reading) {
        return Arrays.stream(Optional.ofNullable(reading.getInstruments()).orElse("").split(",")).map(String::strip)
            .filter(one -> !one.isEmpty()).collect(Collectors.toCollection(ArrayList::new));
    }

    private static void tick(OpenRecord record, Reading reading, Instrument instrument, boolean ticked, String label) {
        List<String> told = told(reading);
        told.remove(instrument.getId());
        if (ticked) {
            told.add(instrument.getId());
        }
        Field field = Field.of(reading, Literals.READING__INSTRUMENTS);
        if (told.isEmpty()) {
            record.edits().clear(field, label);
        } else {
            record.edits().set(field, String.join(", ", told), label);
        }
    }
}
