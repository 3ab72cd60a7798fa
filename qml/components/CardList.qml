pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The numbers of a card by what they are taken from, in the order of use: those that are made ticked, the one in hand
// opened and large, what has no room counted. What a cutter is set to is opened as one.
Item {
    id: root

    required property FigureViewModel figure
    // What takes room from the list above, and what stands below it where there is room left.
    property string refusal: ""
    property string below: ""
    readonly property var settings: figure.settings
    readonly property double rowHeight: Math.ceil(Metrics.label * 1.27)
    readonly property double room: height - (refused.visible ? refused.height : 0)
    readonly property var laid: layOut(settings, room - opened.height)
    readonly property bool fits: list.height <= room + 0.5

    // The rows above and below the one in hand that have room: the next one first, then what was done last.
    function layOut(settings: var, free: double): var {
        const all = settings;
        let first = 0;
        while (first + 1 < all.length && !all[first].now)
            first += 1;
        let last = first;
        while (last + 1 < all.length && all[last + 1].now)
            last += 1;
        const rows = (from, to, before) => {
            const lines = [];
            for (let i = from; i < to; ++i) {
                if (i === before || all[i].heading !== all[i - 1].heading)
                    lines.push({
                        "heading": true,
                        "name": all[i].heading,
                        "value": "",
                        "done": false
                    });
                lines.push({
                    "heading": false,
                    "name": all[i].name,
                    "value": all[i].value,
                    "done": all[i].done
                });
            }
            return lines;
        };
        // The heading of the one in hand always stands above it.
        const above = from => all.length === 0 ? [] : rows(from, first + 1, from).slice(0, -1);
        const under = to => rows(last + 1, to, -1);
        const takes = (from, to) => (above(from).length + under(to).length + (to < all.length ? 1 : 0)) * rowHeight <= free;
        let from = first;
        let to = Math.min(last + 1, all.length);
        if (to < all.length && takes(from, to + 1))
            to += 1;
        while (from > 0 && takes(from - 1, to))
            from -= 1;
        while (to < all.length && takes(from, to + 1))
            to += 1;
        const lines = above(from);
        const more = all.length - to;
        // With no line left for it, what has no room is counted beside the name, or beside the heading where there is none.
        if (more > 0 && opened.ofCutter && !takes(from, to))
            lines[lines.length - 1].value = qsTr("%1 more").arg(more);
        return {
            "above": lines,
            "under": under(to),
            "more": takes(from, to) ? more : 0,
            "beside": takes(from, to) ? 0 : more
        };
    }

    Words {
        id: refused
        objectName: "refusal"
        x: opened.indent
        width: root.width - x
        visible: text !== ""
        text: root.refusal
        color: Theme.worked
        font.bold: true
        font.pixelSize: Metrics.label
    }
    Column {
        id: list
        y: refused.visible ? refused.height : 0
        width: root.width

        Repeater {
            model: root.laid.above
            CardLine {
                x: opened.indent
                width: root.width - x
            }
        }
        SettingInHand {
            id: opened
            objectName: "opened"
            width: root.width
            figure: root.figure
            settings: root.settings
            room: root.room - root.rowHeight
            more: root.laid.beside
        }
        Repeater {
            model: root.laid.under
            CardLine {
                x: opened.indent
                width: root.width - x
            }
        }
        Words {
            objectName: "more"
            anchors.right: parent.right
            height: root.rowHeight
            visible: root.laid.more > 0
            text: qsTr("%1 more").arg(root.laid.more)
            color: Theme.quiet
            font.pixelSize: Metrics.label
            wrapMode: Text.NoWrap
            lineHeight: 1
        }
    }
    Words {
        objectName: "below"
        x: opened.indent
        y: root.height - height
        width: root.width - x
        visible: text !== "" && list.y + list.height + Metrics.mm(2) <= y
        text: root.below
        font.pixelSize: Metrics.label
    }
}
