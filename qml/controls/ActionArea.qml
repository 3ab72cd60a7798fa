import QtQuick
import QtQuick.Templates as T

// Where something can be done: it holds the actions that are offered in it, its own as well as those of the keys that
// stand on it.
Item {
    id: root

    property alias actions: offered.actions
    // The page of it that is shown, where it has several and they offer in its stead.
    property ActionArea inner: null

    // What a pedal or the keyboard asks for. A screen's own actions go before those of its frame.
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
