pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Theme

// Paragraphs over as many pages as they need; none is cut.
Item {
    id: root

    required property var paragraphs
    property int page: 0
    property int pages: 1
    property double spacing: Metrics.mm(3)

    function settle() {
        let top = 0;
        let at = 0;
        for (let i = 0; i < rows.count; ++i) {
            const row = rows.itemAt(i);
            if (row === null)
                return;
            if (top > 0 && top + row.height > root.height) {
                at += 1;
                top = 0;
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

    Repeater {
        id: rows
        model: root.paragraphs

        Words {
            required property string modelData
            property int onPage: 0

            width: root.width
            visible: onPage === root.page
            text: modelData
            onHeightChanged: Later.call(root.settle)
        }
    }
}
