// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.MoveCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;

import garboard.model.CommissioningRecord;
import garboard.model.RecordPath;
import garboard.model.provider.GarboardItemProviderAdapterFactory;

/** Every change of an open record goes through here, so that each can be taken back, and all are told to who shows the record. */
public final class Edits {

    private final CommissioningRecord record;
    private final Steps steps = new Steps();
    private final EditingDomain domain = new AdapterFactoryEditingDomain(new GarboardItemProviderAdapterFactory(), steps);
    private final Listeners<RecordChange> listeners = new Listeners<>();
    private final ChangeWatch watch = new ChangeWatch();
    private final Unread unread;

    Edits(CommissioningRecord record) {
        this.record = record;
        this.unread = new Unread(record, domain);
        record.eAdapters().add(watch);
    }

    /** {@return the subscription of a listener that is told after each edit, undo and redo} */
    public Listeners.Subscription onChange(java.util.function.Consumer<? super RecordChange> listener) {
        return listeners.add(listener);
    }

    /** Starts filling in a field: everything done through what it returns is one step to undo, until something else is done. */
    public Typing typing(Field field, String label) {
        return new Typing(this, field, label);
    }

    /** Starts moving several fields at once: everything done through what it returns is one step to undo, until something else is done. */
    public JointTyping typingJointly(String label) {
        return new JointTyping(this, label);
    }

    /** Enters a value. @param label what the step is called in "Undo ..." */
    public void set(Field field, Object value, String label) {
        if (unread(field).isPresent() || field.value().filter(value::equals).isEmpty()) {
            execute(label, setting(field, value));
        }
    }

    /** Empties a field. */
    public void clear(Field field, String label) {
        execute(label, clearing(field));
    }

    /** Appends an item to a list, making the parts on the way to the list. @return the item, with its id */
    public <T extends EObject> T add(EObject anchor, List<? extends EReference> pathToList, T item, String label) {
        EObject owner = anchor;
        var commands = new ArrayList<Command>();
        int step = 0;
        while (step < pathToList.size() - 1 && owner.eGet(pathToList.get(step)) != null) {
            owner = (EObject) owner.eGet(pathToList.get(step));
            step++;
        }
        if (step == pathToList.size() - 1) {
            commands.add(AddCommand.create(domain, owner, pathToList.get(step), item));
        } else {
            EObject part = item;
            for (int up = pathToList.size() - 1; up > step; up--) {
                part = wrapped(pathToList.get(up), part);
            }
            commands.add(SetCommand.create(domain, owner, pathToList.get(step), part));
        }
        execute(label, commands);
        return item;
    }

    private static EObject wrapped(EReference reference, EObject inside) {
        EObject part = EcoreUtil.create(reference.getEContainingClass());
        if (reference.isMany()) {
            @SuppressWarnings("unchecked")
            List<EObject> list = (List<EObject>) part.eGet(reference);
            list.add(inside);
        } else {
            part.eSet(reference, inside);
        }
        return part;
    }

    /** Takes items or parts out of the record, with what was typed into them and what refers to them. */
    public void remove(Collection<? extends EObject> parts, String label) {
        var commands = new ArrayList<Command>(forgettingReferences(parts));
        commands.addAll(unread.forgettingBelow(parts));
        for (EObject part : new LinkedHashSet<>(parts)) {
            EReference reference = part.eContainmentFeature();
            commands.add(reference.isMany() ? RemoveCommand.create(domain, part.eContainer(), reference, part)
                : SetCommand.create(domain, part.eContainer(), reference, SetCommand.UNSET_VALUE));
        }
        execute(label, commands);
    }

    /** A record that refers to what is not in it, such as an answer to a photograph that was taken out, could not be saved. */
    private List<Command> forgettingReferences(Collection<? extends EObject> parts) {
        var commands = new ArrayList<Command>();
        EcoreUtil.UsageCrossReferencer.findAll(parts, record).forEach((part, places) -> places.stream()
            .filter(place -> place.getEStructuralFeature() instanceof EReference reference && !reference.isContainment() && reference.isChangeable())
            .forEach(place -> commands.add(place.getEStructuralFeature().isMany()
                ? RemoveCommand.create(domain, place.getEObject(), place.getEStructuralFeature(), part)
                : SetCommand.create(domain, place.getEObject(), place.getEStructuralFeature(), SetCommand.UNSET_VALUE))));
        return commands;
    }

    /** Moves an item to another place in its list. */
    public void move(EObject item, int index, String label) {
        execute(label, List.of(MoveCommand.create(domain, item.eContainer(), item.eContainmentFeature(), item, index)));
    }

    /** Sets many fields of existing parts in one step. */
    public void setAll(List<Setting> settings, String label) {
        var commands = new ArrayList<Command>(unread.forgetting(settings.stream()
            .map(setting -> RecordPath.key(setting.owner(), setting.feature())).collect(Collectors.toSet())));
        settings.forEach(setting -> commands.add(SetCommand.create(domain, setting.owner(), setting.feature(), setting.value())));
        execute(label, commands);
    }

    /** Inserts an item into a list of an existing part. @return the item, with its id */
    public <T extends EObject> T insert(EObject owner, EReference list, int index, T item, String label) {
        execute(label, List.of(AddCommand.create(domain, owner, list, item, index)));
        return item;
    }

    /** Makes several edits one step to undo, told as one change. Edits made in the course of others belong to those. */
    public void together(String label, Runnable several) {
        if (steps.isGathering()) {
            several.run();
            return;
        }
        try {
            steps.together(label, several);
        } finally {
            tell();
        }
    }

    /** A value for a field of an existing part. */
    public record Setting(EObject owner, EStructuralFeature feature, Object value) {
    }

    /** {@return what was typed into a field and could not be read} */
    public Optional<String> unread(Field field) {
        return unread.text(field.key());
    }

    public boolean canUndo() {
        return steps.canUndo();
    }

    public boolean canRedo() {
        return steps.canRedo();
    }

    /** {@return what undo would take back} */
    public Optional<String> undoLabel() {
        return canUndo() ? Optional.of(steps.getUndoCommand().getLabel()) : Optional.empty();
    }

    public Optional<String> redoLabel() {
        return canRedo() ? Optional.of(steps.getRedoCommand().getLabel()) : Optional.empty();
    }

    public void undo() {
        if (canUndo()) {
            steps.undo();
            tell();
        }
    }

    public void redo() {
        if (canRedo()) {
            steps.redo();
            tell();
        }
    }

    /** {@return whether the record differs from what was saved last} */
    public boolean unsaved() {
        return steps.isSaveNeeded();
    }

    void saved() {
        steps.saveIsDone();
    }

    // What Typing does ------------------------------------------------------------------------------------------------

    /** {@return whether a field is still in the record, and not of an item that was taken out while it was typed into} */
    boolean isHere(Field field) {
        return EcoreUtil.isAncestor(record, field.anchor());
    }

    List<Command> setting(Field field, Object value) {
        var commands = new ArrayList<Command>(unread.forgetting(field.key()));
        commands.add(entering(field, value));
        return commands;
    }

    List<Command> clearing(Field field) {
        var commands = new ArrayList<Command>(unread.forgetting(field.key()));
        field.owner().filter(owner -> owner.eIsSet(field.attribute()))
            .ifPresent(owner -> commands.add(SetCommand.create(domain, owner, field.attribute(), SetCommand.UNSET_VALUE)));
        return commands;
    }

    List<Command> leavingUnread(Field field, String text) {
        var commands = new ArrayList<Command>(clearing(field));
        commands.add(unread.keeping(field.key(), text));
        return commands;
    }

    /** Goes on with the step that the last call for the same typing began, or begins one. */
    Optional<Step> type(Optional<Step> begun, String label, List<Command> commands) {
        try {
            return steps.grow(begun, label, commands);
        } finally {
            tell();
        }
    }

    void giveUp(Step step) {
        try {
            steps.giveUp(step);
        } finally {
            tell();
        }
    }

    private Command entering(Field field, Object value) {
        int step = field.existing();
        EObject owner = field.nearest();
        List<EStructuralFeature> path = field.path();
        if (step == path.size() - 1) {
            return SetCommand.create(domain, owner, path.get(step), value);
        }
        EObject part = null;
        for (int up = path.size() - 1; up > step; up--) {
            EObject above = EcoreUtil.create(((EReference) path.get(up - 1)).getEReferenceType());
            above.eSet(path.get(up), part == null ? value : part);
            part = above;
        }
        return SetCommand.create(domain, owner, path.get(step), part);
    }

    private void execute(String label, List<Command> commands) {
        try {
            steps.take(label, commands);
        } finally {
            tell();
        }
    }

    private void tell() {
        if (!steps.isGathering()) {
            watch.take().ifPresent(listeners::tell);
        }
    }

    /** {@return the record that is edited} */
    public CommissioningRecord record() {
        return record;
    }
}
