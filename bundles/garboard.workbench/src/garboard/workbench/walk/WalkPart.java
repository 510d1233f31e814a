// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;

import org.eclipse.e4.ui.di.Focus;
import org.eclipse.e4.ui.workbench.modeling.EPartService;
import org.eclipse.e4.ui.workbench.modeling.EPartService.PartState;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

import garboard.checks.Evaluation;
import garboard.session.Caution;
import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.session.StopStanding;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Palette;

/** The walk through the installation: the record in short, the stops with their standing, and what can hurt at the chosen one. */
public final class WalkPart {

    @Inject
    private Desk desk;
    @Inject
    private EPartService parts;
    private final List<Subscription> subscriptions = new ArrayList<>();
    private List<Subscription> following = List.of();
    private Summary summary;
    private StopTree tree;
    private CautionNote caution;

    @PostConstruct
    void create(Composite parent) {
        int margin = Lettering.width(parent, 1);
        GridLayoutFactory.fillDefaults().margins(margin, margin).spacing(0, margin).applyTo(parent);
        summary = new Summary(parent, desk);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(summary.control());
        tree = new StopTree(parent, desk);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(tree.control());
        caution = new CautionNote(parent, desk);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(caution.control());
        tree.control().addListener(SWT.DefaultSelection, event -> parts.showPart("garboard.part.page", PartState.ACTIVATE));
        subscriptions.add(desk.onOpen(this::open));
        subscriptions.add(desk.onGo(place -> go()));
        subscriptions.add(desk.onPalette(this::paint));
        open(desk.open());
    }

    private void open(Optional<OpenRecord> record) {
        following.forEach(Subscription::close);
        following = record.map(one -> List.of(one.edits().onChange(change -> {
            summary.show(one.record());
            caution.show(Caution.at(desk.stop(), one.record()));
        }), one.verdicts().onChange(this::show))).orElse(List.of());
        record.ifPresent(one -> {
            summary.show(one.record());
            show(one.verdicts().evaluation());
        });
        go();
    }

    private void show(Evaluation evaluation) {
        summary.show(evaluation);
        tree.show(StopStanding.of(evaluation));
    }

    private void go() {
        tree.follow(desk.stop());
        caution.show(desk.open().flatMap(record -> Caution.at(desk.stop(), record.record())));
    }

    private void paint(Palette palette) {
        summary.paint();
        tree.paint();
        caution.paint();
    }

    @Focus
    void focus() {
        tree.control().setFocus();
    }

    @PreDestroy
    void end() {
        subscriptions.forEach(Subscription::close);
        following.forEach(Subscription::close);
    }
}
