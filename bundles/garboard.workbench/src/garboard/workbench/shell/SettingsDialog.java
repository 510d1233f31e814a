// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

import garboard.quantity.UnitSystem;
import garboard.report.Paper;
import garboard.session.Listeners.Subscription;
import garboard.workbench.Desk;
import garboard.workbench.ask.PlainDialog;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Settings;
import garboard.workbench.text.Texts;

/** What a person sets for all records. Each choice holds at once, but for the language, which holds from the next start. */
public final class SettingsDialog extends PlainDialog {

    private final Texts.Of texts;

    /** One of several, as a key of the texts and what it stands for. */
    private record Option<T>(String key, T value) {
    }

    public SettingsDialog(Shell parent, Desk desk) {
        super(parent, desk, "settings");
        this.texts = desk.texts(SettingsDialog.class);
    }

    @Override
    protected String title() {
        return texts.get("settings.title");
    }

    @Override
    protected void fill(Composite area) {
        Settings settings = desk().settings();
        choices(area, "units", List.of(new Option<>("si", UnitSystem.SI), new Option<>("us", UnitSystem.US)), settings.units(), settings::setUnits);
        choices(area, "paper", List.of(new Option<>("a4", Paper.A4), new Option<>("letter", Paper.LETTER)), settings.paper(), settings::setPaper);
        choices(area, "shade", List.of(new Option<>("desktop", Settings.Shade.AS_DESKTOP), new Option<>("light", Settings.Shade.LIGHT),
            new Option<>("dark", Settings.Shade.DARK)), settings.shade(), settings::setShade);
        choices(area, "language", List.of(new Option<>("machine", ""), new Option<>("en", "en"), new Option<>("de", "de")), settings.languageSet(),
            settings::setLanguage);
    }

    private <T> void choices(Composite area, String name, List<Option<T>> options, T now, Consumer<? super T> taken) {
        var group = new Group(area, SWT.NONE);
        group.setText(texts.get(name + ".title"));
        int margin = Lettering.width(area, 1.2);
        GridLayoutFactory.fillDefaults().margins(margin, margin / 2).spacing(0, Lettering.height(area, 0.1)).applyTo(group);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(group);
        for (Option<T> option : options) {
            var button = new Button(group, SWT.RADIO);
            button.setText(texts.get(name + "." + option.key()));
            button.setData("garboard.id", "settings." + name + "." + option.key());
            button.setSelection(option.value().equals(now));
            button.addListener(SWT.Selection, event -> {
                if (button.getSelection()) {
                    taken.accept(option.value());
                }
            });
        }
        Label hint = text(group, texts.get(name + ".hint"));
        hint.setForeground(desk().palette().faint());
        Subscription repainted = desk().onPalette(palette -> hint.setForeground(palette.faint()));
        hint.addListener(SWT.Dispose, event -> repainted.close());
    }

    @Override
    protected void createButtonsForButtonBar(Composite row) {
        button(row, IDialogConstants.CANCEL_ID, "close", texts.get("close"), true);
    }
}
