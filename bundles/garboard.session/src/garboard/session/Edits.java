// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EContentAdapter;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.MoveCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;

import garboard.model.CommissioningRecord;
import garboard.model.provider.GarboardItemProviderAdapterFactory;

/** Every change of an open record goes through here, so that each can be taken back, and all are told to who shows the record. */
public final class Edits {

    private final CommissioningRecord record;
    private final BasicCommandStack stack = new BasicCommandStack();
    private final EditingDomain domain = new AdapterFactoryEditingDomain(new GarboardItemProviderAdapterFactory(), stack);
    private final Listeners<RecordChange> listeners = new Listeners<>();
    private final Set<RecordChange.Touched> touched = new LinkedHashSet<>();
    private final Unread unread;

    Edits(CommissioningRecord record) {
        this.record = record;
        this.unread = new Unread(record, domain);
        record.eAdapters().add(new Watch());
        stack.addCommandStackListener(event -> tell());
    }

    /** {@return the subscription of a listener that is told after each edit, undo and redo} */
    public Listeners.Subscription onChange(java.util.function.Consumer<? super RecordChange> listener) {
        return listeners.add(listener);
    }

    /** Starts filling in a field: everything done through what it returns is one step to undo, until something else is done. */
    public Typing typing(Field field, String label) {
        return new Typing(this, field, label);
    }

    /** Enters a value. @param label what the step is called in "Undo ..." */
    public void set(Field field, Object value, String label) {
        execute(label, setting(field, value));
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

    /** Takes items or parts out of the record, with what was typed into them. */
    public void remove(Collection<? extends EObject> parts, String label) {
        var commands = new ArrayList<Command>();
        for (EObject part : parts) {
            commands.addAll(unread.forgettingBelow(part));
            EReference reference = part.eContainmentFeature();
            commands.add(reference.isMany() ? RemoveCommand.create(domain, part.eContainer(), reference, part)
                : SetCommand.create(domain, part.eContainer(), reference, SetCommand.UNSET_VALUE));
        }
        execute(label, commands);
    }

    /** Moves an item to another place in its list. */
    public void move(EObject item, int index, String label) {
        execute(label, List.of(MoveCommand.create(domain, item.eContainer(), item.eContainmentFeature(), item, index)));
    }

    /** Sets many fields of existing parts in one step. */
    public void setAll(List<Setting> settings, String label) {
        var commands = new ArrayList<Command>();
        for (Setting setting : settings) {
            commands.add(SetCommand.create(domain, setting.owner(), setting.feature(), setting.value()));
            commands.addAll(unread.forgetting(garboard.model.RecordPath.key(setting.owner(), setting.feature())));
        }
        execute(label, commands);
    }

    /** Inserts an item into a list of an existing part. @return the item, with its id */
    public <T extends EObject> T insert(EObject owner, EReference list, int index, T item, String label) {
        execute(label, List.of(AddCommand.create(domain, owner, list, item, index)));
        return item;
    }

    /** Makes several edits one step to undo, told as one change. Edits made in the course of others belong to those. */
    public void together(String label, Runnable several) {
        if (gathering.isPresent()) {
            several.run();
            return;
        }
        gathering = Optional.of(new Gathering(label));
        try {
            several.run();
        } finally {
            gathering = Optional.empty();
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
        return stack.canUndo();
    }

    public boolean canRedo() {
        return stack.canRedo();
    }

    /** {@return what undo would take back} */
    public Optional<String> undoLabel() {
        return canUndo() ? Optional.of(stack.getUndoCommand().getLabel()) : Optional.empty();
    }

    public Optional<String> redoLabel() {
        return canRedo() ? Optional.of(stack.getRedoCommand().getLabel()) : Optional.empty();
    }

    public void undo() {
        if (canUndo()) {
            stack.undo();
        }
    }

    public void redo() {
        if (canRedo()) {
            stack.redo();
        }
    }

    /** {@return whether the record differs from what was saved last} */
    public boolean unsaved() {
        return stack.isSaveNeeded();
    }

    void saved() {
        stack.saveIsDone();
        typed = Optional.empty();
    }

    // What Typing does ------------------------------------------------------------------------------------------------

    private Optional<CompoundCommand> typed = Optional.empty();

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
    Optional<CompoundCommand> type(Optional<CompoundCommand> begun, String label, List<Command> commands) {
        if (commands.isEmpty()) {
            return begun;
        }
        if (begun.isPresent() && typed.equals(begun) && stack.getMostRecentCommand() == begun.get() && !stack.canRedo()) {
            commands.forEach(begun.get()::appendAndExecute);
            tell();
            return begun;
        }
        typed = execute(label, commands);
        return typed;
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

    private Optional<CompoundCommand> execute(String label, List<Command> commands) {
        if (commands.isEmpty()) {
            return Optional.empty();
        }
        if (gathering.isPresent()) {
            return Optional.of(gathering.get().execute(commands));
        }
        var step = new OneByOne(label, commands);
        stack.execute(step);
        return Optional.of(step);
    }

    /** A step whose commands are prepared when those before them are done. */
    private static final class OneByOne extends CompoundCommand {
        private final List<Command> commands;

        OneByOne(String label, List<Command> commands) {
            super(label);
            this.commands = List.copyOf(commands);
        }

        @Override
        protected boolean prepare() {
            return true;
        }

        @Override
        public void execute() {
            commands.forEach(this::appendAndExecute);
        }
    }

    private Optional<Gathering> gathering = Optional.empty();

    /** The one step of several edits; it begins with the first of them, so that none leaves nothing to undo. */
    private final class Gathering {
        private final String label;
        private Optional<CompoundCommand> step = Optional.empty();

        Gathering(String label) {
            this.label = label;
        }

        CompoundCommand execute(List<Command> commands) {
            if (step.isPresent()) {
                commands.forEach(step.get()::appendAndExecute);
            } else {
                step = Optional.of(new OneByOne(label, commands));
                stack.execute(step.get());
            }
            return step.get();
        }
    }

    private void tell() {
        if (!touched.isEmpty() && gathering.isEmpty()) {
            var change = new RecordChange(touched);
            touched.clear();
            listeners.tell(change);
        }
    }

    /** {@return the record that is edited} */
    public CommissioningRecord record() {
        return record;
    }

    private final class Watch extends EContentAdapter {
        @Override
        public void notifyChanged(Notification notification) {
            super.notifyChanged(notification);
            if (!notification.isTouch() && notification.getNotifier() instanceof EObject owner
                    && notification.getFeature() instanceof EStructuralFeature feature) {
                touched.add(new RecordChange.Touched(owner, feature));
            }
        }
    }
}
