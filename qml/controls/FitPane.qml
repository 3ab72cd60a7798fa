import QtQuick

// A column that takes its next tighter level while it is higher than its room. `key` changes with the content.
Item {
    id: root

    default property alias content: column.data
    property alias spacing: column.spacing
    property string key
    property int level: 0
    property int tightest: 3
    readonly property bool fits: column.implicitHeight <= height + 0.5

    function settle() {
        if (!fits && level < tightest && height > 0)
            level += 1;
    }
    function again() {
        level = 0;
        Later.call(settle);
    }

    onKeyChanged: again()
    onHeightChanged: again()
    onWidthChanged: again()
    onLevelChanged: Later.call(settle)

    Column {
        id: column
        width: root.width
        onImplicitHeightChanged: Later.call(root.settle)
    }
}
