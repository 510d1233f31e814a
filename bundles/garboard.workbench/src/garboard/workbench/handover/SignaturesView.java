// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handover;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;

import garboard.checks.Standing;
import garboard.model.Signature;
import garboard.session.OpenRecord;
import garboard.session.RecordKey;
import garboard.session.handover.Signing;
import garboard.session.handover.SinceSignature;
import garboard.session.handover.SinceSignature.Difference;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.text.Texts;

/** The signatures of the record: what each says, what changed since, and the lines that wait for somebody. */
final class SignaturesView {

    private static final int FIRST = 4;

    private final OpenRecord record;
    private final Desk desk;
    private final Texts.Of texts;
    private final Tint tint;
    private final Composite area;
    private final Consumer<Signature> begin;
    private final Set<String> whole = new HashSet<>();
    private List<Shown> shown = List.of();
    private Optional<String> told = Optional.empty();
    private Optional<RevisionView> revision = Optional.empty();

    /** A signature as it was shown last: what decides whether it must be shown anew. */
    private record Shown(Signature signature, List<String> words, SinceSignature since) {
    }

    /** @param begin told when the person wants to sign on a line that waits */
    SignaturesView(Composite parent, OpenRecord record, Desk desk, Tint tint, Consumer<Signature> begin) {
        this.record = record;
        this.desk = desk;
        this.texts = desk.texts(SignaturesView.class);
        this.tint = tint;
        this.begin = begin;
        area = Sheet.area(parent, 1);
        area.setData("garboard.id", "signoff.signatures");
    }

    /** {@return whether what somebody signed is no longer what the record says} */
    boolean changedSince() {
        return shown.stream().anyMatch(one -> !one.since.changes().isEmpty());
    }

    /** {@return who signed what is no longer so} */
    String changedSinceWhose() {
        return shown.stream().filter(one -> !one.since.changes().isEmpty()).map(one -> name(one.signature)).collect(Collectors.joining(", "));
    }

    void show() {
        List<Shown> now = record.record().getSignatures().stream()
            .map(one -> new Shown(one, List.of(head(one), text(one.getStatement())), SinceSignature.of(record, one))).toList();
        if (!now.equals(shown) || area.getChildren().length == 0) {
            shown = now;
            fill();
        }
    }

    private void fill() {
        revision = Optional.empty();
        for (Control child : area.getChildren()) {
            child.dispose();
        }
        told.ifPresent(words -> tint.with(Sheet.words(area, words), palette -> palette.of(Standing.ACCEPTED)).setData("garboard.id", "signatures.told"));
        if (shown.isEmpty()) {
            tint.faint(Sheet.words(area, texts.get("signatures.none")));
        }
        shown.forEach(this::block);
        area.requestLayout();
    }

    private void block(Shown one) {
        var block = Sheet.area(area, 1);
        block.setData("garboard.id", "signature:" + one.signature.getId());
        GridDataFactory.fillDefaults().grab(true, false).indent(0, Lettering.height(area, 0.4)).applyTo(block);
        Label head = tint.ink(Sheet.words(block, one.words.getFirst()));
        Lettering.bold(head);
        if (!Signing.isSigned(one.signature)) {
            tint.faint(Sheet.words(block, texts.get("signatures.waits")));
            Composite row = Sheet.row(block);
            Sheet.button(row, "signature.sign:" + one.signature.getId(), texts.get("signatures.sign"), () -> begin.accept(one.signature));
            Sheet.button(row, "signature.takeOut:" + one.signature.getId(), texts.get("signatures.takeOut"),
                () -> takeBack(one.signature, "signatures.takenOut"));
            return;
        }
        if (!one.words.getLast().isEmpty()) {
            tint.ink(Sheet.words(block, one.words.getLast()));
        }
        since(block, one);
        Composite row = Sheet.row(block);
        if (!one.since.changes().isEmpty()) {
            Sheet.button(row, "signature.revision:" + one.signature.getId(), texts.get("signatures.revision"), () -> beginRevision(block, one));
        }
        Sheet.button(row, "signature.takeBack:" + one.signature.getId(), texts.get("signatures.takeBack"),
            () -> takeBack(one.signature, "signatures.takenBack"));
    }

    private void since(Composite block, Shown one) {
        if (!one.since.comparable()) {
            tint.faint(Sheet.words(block, texts.get("since.unknown")));
            return;
        }
        List<Difference> changes = one.since.changes();
        int byTime = one.since.differences().size() - changes.size();
        if (one.since.differences().isEmpty()) {
            tint.with(Sheet.words(block, texts.get("since.same")), palette -> palette.of(Standing.MEETS));
        }
        if (!changes.isEmpty()) {
            Label changed = tint.with(Sheet.words(block, texts.get("since.changed", name(one.signature), changes.size())),
                palette -> palette.of(Standing.FALLS_SHORT));
            Lettering.bold(changed);
            String id = one.signature.getId();
            int limit = whole.contains(id) || changes.size() <= FIRST + 1 ? changes.size() : FIRST;
            changes.subList(0, limit).forEach(change -> line(block, change));
            if (limit < changes.size()) {
                tint.ink(Sheet.link(block, "", texts.get("since.all", changes.size()), () -> {
                    whole.add(id);
                    fill();
                }));
            }
        }
        if (byTime > 0) {
            tint.faint(Sheet.words(block, texts.get("since.byTime", byTime)));
        }
    }

    private void line(Composite block, Difference change) {
        String title = change.now().map(verdict -> verdict.check().title())
            .or(() -> record.verdicts().catalogue().find(change.key().check()).map(check -> check.title())).orElse(change.key().check());
        String where = change.key().subject().contains("[") ? RecordKey.of(record.record(), change.key().subject())
            .map(key -> " (" + key.words(desk.labels()) + ")").orElse("") : "";
        Link link = Sheet.link(block, texts.get("since.line", title + where, words(change)), texts.get("since.show"), () -> desk.lookAt(change.key()));
        tint.ink(link);
        GridDataFactory.createFrom((GridData) link.getLayoutData()).indent(Lettering.width(block, 2), 0).applyTo(link);
    }

    private String words(Difference change) {
        String then = change.then().map(stored -> standing(stored.getStanding())).orElse("");
        String now = texts.get("standing." + change.standing().name());
        return switch (change.what()) {
            case STANDING -> texts.get("since.standing", then, now);
            case FIGURES -> texts.get("since.figures", now);
            case CAME -> texts.get("since.came", now);
            case WENT -> texts.get("since.went", then);
        };
    }

    /** Stored verdicts have the English word of the standing. */
    private String standing(String label) {
        return Stream.of(Standing.values()).filter(one -> one.label().equals(label)).findFirst()
            .map(one -> texts.get("standing." + one.name())).orElse(text(label));
    }

    private void takeBack(Signature signature, String key) {
        String name = name(signature);
        told = Optional.of(texts.get(key, name));
        Signing.takeBack(record, signature, texts.get("step.takeBack", name));
    }

    /** Says nothing more of what was done last. */
    void forget() {
        told = Optional.empty();
    }

    private void beginRevision(Composite block, Shown one) {
        if (revision.isEmpty()) {
            String changes = one.since.changes().stream().map(change -> change.key().check() + ": " + words(change)).limit(FIRST * 3L)
                .collect(Collectors.joining("; "));
            String proposed = texts.get("revision.proposed", name(one.signature), String.valueOf(one.signature.getSignedOn()), changes);
            revision = Optional.of(new RevisionView(block, record, desk, tint, proposed, this::fill));
            area.requestLayout();
            revision.get().setFocus();
        }
    }

    private String head(Signature signature) {
        var parts = new ArrayList<String>();
        Stream.of(signature.getName(), signature.getLicence(), signature.getPlace(),
            signature.getSignedOn() == null ? "" : signature.getSignedOn().toString())
            .map(SignaturesView::text).filter(part -> !part.isEmpty()).forEach(parts::add);
        return texts.get("signatures.head", desk.labels().label(signature.getRole()),
            parts.isEmpty() ? texts.get("signatures.nobody") : String.join(", ", parts));
    }

    private String name(Signature signature) {
        return text(signature.getName()).isEmpty() ? desk.labels().label(signature.getRole()) : signature.getName();
    }

    private static String text(String stored) {
        return stored == null ? "" : stored.strip();
    }
}
