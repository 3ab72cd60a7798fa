import QtQuick

// The keys of an area's actions that have one place, in the order in which the area offers them. A key stays the same
// item as long as its action exists, since a finger may be on it.
Repeater {
    id: root

    required property ActionArea area
    required property int place
    property var shown: []

    function settle() {
        const now = [];
        for (let i = 0; i < area.actions.length; ++i) {
            const one = area.actions[i] as ScreenAction;
            if (one.place === place)
                now.push(one);
        }
        if (now.length !== shown.length || now.some((one, i) => one !== shown[i]))
            shown = now;
    }

    model: shown
    Component.onCompleted: settle()

    readonly property Connections heard: Connections {
        target: root.area
        function onActionsChanged() {
            root.settle();
        }
    }
}
