import QtQuick

// A column that goes to its next tighter level while it is higher than its room. `key` changes with the content.
Item {
    id: root

    default property alias content: column.data
    property alias spacing: column.spacing
    property string key
    property int level: 0
    property int tightest: 3
    readonly property bool fits: column.implicitHeight <= height + 0.5

    // A column has its final height only once it and its items have been laid out: Qt does so just before the next
    // frame, and by then the pane would have become one level too tight.
    function layOut(item: var) {
        for (let i = 0; i < item.children.length; ++i)
            layOut(item.children[i]);
        if (item.forceLayout)
            item.forceLayout();
    }
    function settle() {
        layOut(column);
        while (!fits && level < tightest && height > 0) {
            level += 1;
            layOut(column);
        }
    }
    function again() {
        level = 0;
        Later.call(settle);
    }

    onKeyChanged: again()
    onHeightChanged: again()
    onWidthChanged: again()

    Column {
        id: column
        width: root.width
        onImplicitHeightChanged: Later.call(root.settle)
    }
}
