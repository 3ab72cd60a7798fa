pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Theme

// Paragraphs over as many pages as they need; none is cut. On the first page those that begin above `besideHeight`
// leave `beside` free at the right.
Item {
    id: root

    required property var paragraphs
    // So many of the first carry their number.
    property int numbered: 0
    property int page: 0
    property int pages: 1
    property double spacing: Metrics.mm(3)
    property int textSize: Metrics.text
    property double beside: 0
    property double besideHeight: 0
    // Widths set here change heights, which must not start the layout again.
    property bool settling: false

    function settle() {
        if (settling || width <= 0)
            return;
        settling = true;
        place();
        settling = false;
    }
    function place() {
        let top = 0;
        let at = 0;
        for (let i = 0; i < rows.count; ++i) {
            const row = rows.itemAt(i);
            if (row === null)
                return;
            row.width = at === 0 && top < root.besideHeight ? root.width - root.beside : root.width;
            if (top > 0 && top + row.height > root.height) {
                at += 1;
                top = 0;
                row.width = root.width;
            }
            row.y = top;
            row.onPage = at;
            top += row.height + root.spacing;
        }
        root.pages = at + 1;
        if (root.page > at)
            root.page = 0;
    }

    onParagraphsChanged: {
        page = 0;
        Later.call(settle);
    }
    onHeightChanged: Later.call(settle)
    onWidthChanged: Later.call(settle)
    onBesideChanged: Later.call(settle)
    onBesideHeightChanged: Later.call(settle)

    Repeater {
        id: rows
        model: root.paragraphs

        Item {
            id: row

            required property string modelData
            required property int index
            readonly property bool counted: index < root.numbered
            property int onPage: -1

            visible: onPage === root.page
            height: said.implicitHeight
            onHeightChanged: {
                if (!root.settling)
                    Later.call(root.settle);
            }

            NumberDisc {
                id: disc
                visible: row.counted
                y: Metrics.mm(0.6)
                number: row.index + 1
            }
            Words {
                id: said
                x: row.counted ? disc.width + Metrics.mm(2.4) : 0
                width: row.width - x
                text: row.modelData
                font.pixelSize: root.textSize
            }
        }
    }
}
