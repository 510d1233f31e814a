// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handover;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import garboard.checks.Standing;
import garboard.model.Party;
import garboard.model.Signature;
import garboard.model.SignatureRole;
import garboard.session.OpenRecord;
import garboard.session.handover.Signatory;
import garboard.session.handover.Signatory.Obstacle;
import garboard.session.handover.SignOff;
import garboard.session.handover.Signing;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Spoken;
import garboard.workbench.text.Texts;

/** Where a person signs: as what, who, where; what is signed; and, while something is open, in the person's own words that it stands. */
final class SigningView {

    private static final List<SignatureRole> ROLES = List.of(SignatureRole.INSTALLER, SignatureRole.OWNER, SignatureRole.SURVEYOR,
        SignatureRole.WARRANTY_DESK);
    private static final int WORD_LINES = 3;

    private final OpenRecord record;
    private final Desk desk;
    private final Texts.Of texts;
    private final Tint tint;
    private final OpenPointWords words;
    private final Runnable signed;
    private final Composite area;
    private final Combo role;
    private final Text name;
    private final Text licence;
    private final Text place;
    private final Label date;
    private final Label ownLabel;
    private final Text own;
    private final Label hint;
    private final Label statement;
    private final Label obstacle;
    private final Button sign;
    private Optional<SignOff> signOff = Optional.empty();

    /** @param signed told when somebody signed */
    SigningView(Composite parent, OpenRecord record, Desk desk, Tint tint, OpenPointWords words, Runnable signed) {
        this.record = record;
        this.desk = desk;
        this.texts = desk.texts(SigningView.class);
        this.tint = tint;
        this.words = words;
        this.signed = signed;
        area = Sheet.area(parent, 2);
        role = field("role", new Combo(area, SWT.READ_ONLY | SWT.DROP_DOWN));
        ROLES.forEach(one -> role.add(desk.labels().label(one)));
        name = field("name", new Text(area, SWT.BORDER));
        licence = field("licence", new Text(area, SWT.BORDER));
        place = field("place", new Text(area, SWT.BORDER));
        tint.ink(label("date"));
        date = tint.ink(Sheet.words(area, ""));
        ownLabel = label("own");
        own = new Text(area, SWT.BORDER | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL);
        introduce(own, "own");
        GridDataFactory.fillDefaults().grab(true, false).hint(1, Lettering.height(own, WORD_LINES + 0.5)).applyTo(own);
        own.addListener(SWT.Traverse, event -> event.doit |= event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        label("none").setText("");
        hint = tint.faint(Sheet.words(area, texts.get("signing.own.hint")));
        tint.ink(label("statement"));
        statement = tint.ink(Sheet.words(area, ""));
        statement.setData("garboard.id", "signoff.statement");
        label("none").setText("");
        obstacle = tint.with(Sheet.words(area, ""), palette -> palette.of(Standing.FALLS_SHORT));
        obstacle.setData("garboard.id", "signoff.obstacle");
        label("none").setText("");
        sign = Sheet.button(area, "signoff.sign", texts.get("signing.sign"), this::sign);
        label("none").setText("");
        tint.faint(Sheet.words(area, texts.get("signing.quiet")));
        role.addListener(SWT.Selection, event -> fillIn());
        for (Text text : List.of(name, licence, place, own)) {
            text.addListener(SWT.Modify, event -> changed());
        }
        hideObstacle();
    }

    private Label label(String key) {
        var label = new Label(area, SWT.NONE);
        if (!key.equals("none")) {
            String word = "signing." + key;
            label.setText(texts.get(word));
        }
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, key.equals("own") || key.equals("statement") ? SWT.BEGINNING : SWT.CENTER).applyTo(label);
        return label;
    }

    private <C extends Control> C field(String key, C control) {
        Label label = tint.ink(label(key));
        label.moveAbove(control);
        introduce(control, key);
        boolean choice = control instanceof Combo;
        GridDataFactory.fillDefaults().align(choice ? SWT.BEGINNING : SWT.FILL, SWT.CENTER).grab(true, false).hint(choice ? SWT.DEFAULT : 1, SWT.DEFAULT)
            .applyTo(control);
        return control;
    }

    private void introduce(Control control, String key) {
        control.setData("garboard.id", "signoff." + (key.equals("own") ? "words" : key));
        String word = "signing." + key;
        Spoken.name(control, texts.get(word).replace("&", ""));
    }

    Composite control() {
        return area;
    }

    private LocalDate today() {
        return LocalDate.now(desk.clock());
    }

    private SignatureRole chosen() {
        return role.getSelectionIndex() < 0 ? SignatureRole.NOT_ENTERED : ROLES.get(role.getSelectionIndex());
    }

    /** The party that signs in this role, as the record names it. */
    private void fillIn() {
        Optional<Party> party = Signatory.party(record.record(), chosen());
        name.setText(party.map(Party::getName).orElse(""));
        licence.setText(party.map(Party::getLicence).orElse(""));
        changed();
    }

    /** Begins with a line that waits for somebody. */
    void begin(Signature prepared) {
        role.select(ROLES.indexOf(prepared.getRole()));
        fillIn();
        Optional.ofNullable(prepared.getName()).filter(given -> !given.isBlank()).ifPresent(name::setText);
        Optional.ofNullable(prepared.getLicence()).ifPresent(licence::setText);
        Optional.ofNullable(prepared.getPlace()).ifPresent(place::setText);
        (name.getText().isBlank() ? name : place).setFocus();
    }

    void setFocus() {
        role.setFocus();
    }

    /** Shows what would be signed now. */
    void show(SignOff now) {
        signOff = Optional.of(now);
        boolean open = !now.isClear();
        date.setText(today().toString());
        String key = open ? "signing.own.open" : "signing.own";
        ownLabel.setText(texts.get(key));
        tint.with(ownLabel, palette -> open ? palette.of(Standing.FALLS_SHORT) : palette.ink());
        if (hint.getVisible() != open) {
            hint.setVisible(open);
            hint.setText(open ? texts.get("signing.own.hint") : "");
            hint.requestLayout();
        }
        sign.setEnabled(!now.isBarred());
        changed();
    }

    private Signatory signatory() {
        return new Signatory(chosen(), name.getText(), licence.getText(), place.getText(), today(), own.getText());
    }

    private void changed() {
        signOff.ifPresent(now -> {
            String text = statement(now, signatory());
            if (!statement.getText().equals(text)) {
                statement.setText(text.replace("&", "&&"));
                statement.requestLayout();
            }
            if (now.isBarred()) {
                say(Set.of(Obstacle.CHECK_BROKE));
            } else if (obstacle.getVisible()) {
                say(signatory().obstacles(now));
            }
        });
    }

    private String statement(SignOff now, Signatory person) {
        String open = now.isClear() ? texts.get("statement.clear") : texts.get("statement.open", words.counts(now));
        return texts.get("statement", person.on().toString()) + " " + open + (person.ownWords().isEmpty() ? "" : " " + person.ownWords());
    }

    private void sign() {
        SignOff now = signOff.orElseThrow();
        Signatory person = signatory();
        Set<Obstacle> obstacles = person.obstacles(now);
        say(obstacles);
        if (obstacles.isEmpty()) {
            Signing.sign(record, person, statement(now, person), texts.get("step.sign", person.name()));
            // Who signs next is somebody else.
            role.deselectAll();
            List.of(name, licence, own).forEach(text -> text.setText(""));
            signed.run();
        } else if (obstacles.contains(Obstacle.NO_ROLE)) {
            role.setFocus();
        } else if (obstacles.contains(Obstacle.NO_NAME)) {
            name.setFocus();
        } else {
            own.setFocus();
        }
    }

    private void say(Set<Obstacle> obstacles) {
        if (obstacles.isEmpty()) {
            hideObstacle();
            return;
        }
        var sentences = obstacles.stream().map(one -> {
            String key = "obstacle." + one.name();
            return texts.get(key);
        }).toList();
        obstacle.setText(String.join(" ", sentences).replace("&", "&&"));
        ((GridData) obstacle.getLayoutData()).exclude = false;
        obstacle.setVisible(true);
        obstacle.requestLayout();
    }

    /** Its place stays, so that nothing moves under the hand that signs. */
    private void hideObstacle() {
        obstacle.setText("");
        obstacle.setVisible(false);
    }
}
