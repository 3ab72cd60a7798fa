import QtQuick
import QtQuick.Templates as T

// An area with actions: it holds those offered in it, its own as well as those of the keys in it.
Item {
    id: root

    property alias actions: offered.actions
    // The page shown, where the area has several pages and these offer the actions in its place.
    property ActionArea inner: null

    // Triggers the action that a pedal or the keyboard asks for. A screen's own actions go before those of its frame.
    function ask(by: int) {
        if (inner !== null) {
            inner.ask(by);
            return;
        }
        for (let i = actions.length - 1; i >= 0; --i) {
            const one = actions[i] as ScreenAction;
            if (one.enabled && (one.by & by) !== 0) {
                one.trigger(root);
                return;
            }
        }
    }
    function offer(action: ScreenAction) {
        offered.addAction(action);
    }

    T.ActionGroup {
        id: offered
        exclusive: false
    }
}
