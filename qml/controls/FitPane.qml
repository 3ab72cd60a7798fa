import QtQuick

// A column that goes to its next tighter level while it is higher than its room. `key` changes with the content.
Item {
    id: root

    default property alias content: column.data
    property alias spacing: column.spacing
    property string key
    property int level: 0
    property int tightest: 3
    // Items outside the column whose size counts in it.
    property list<Item> also
    readonly property bool fits: column.implicitHeight <= height + 0.5
    property bool settling: false
    property double settled: -1

    // A column has its final height only once it and its items have been laid out: Qt does so just before the next
    // frame, and by then the pane would have become one level too tight.
    function layOut(item: var) {
        for (let i = 0; i < item.children.length; ++i)
            layOut(item.children[i]);
        if (item.forceLayout)
            item.forceLayout();
    }
    function layOutAll() {
        for (let i = 0; i < also.length; ++i)
            layOut(also[i]);
        layOut(column);
    }
    // It begins at the widest each time: what was too high while a screen was put together may fit by now.
    function settle() {
        if (settling || height <= 0)
            return;
        settling = true;
        level = 0;
        layOutAll();
        while (!fits && level < tightest) {
            level += 1;
            layOutAll();
        }
        settled = column.implicitHeight;
        settling = false;
    }
    function again() {
        settled = -1;
        Later.call(settle);
    }

    onKeyChanged: again()
    onHeightChanged: again()
    onWidthChanged: again()

    Column {
        id: column
        width: root.width
        onImplicitHeightChanged: {
            if (!root.settling && Math.abs(implicitHeight - root.settled) > 0.5)
                root.again();
        }
    }
}
