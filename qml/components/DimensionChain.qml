pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Shapes
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The dimensions along one edge of a drawing, each between closed arrows, its figure upright in the line. Where a measure is
// too short for its figure this stands beside the line, in its place along it, with a leader to it.
Item {
    id: root

    required property int edge  // ChainsModel
    // In mm of the drawing: the stops along the edge, how far across what they mean lies, and the measures between them.
    required property var along
    required property var across
    required property var shown
    required property var held
    // Where the drawing lies in this item, its scale, and its size in mm.
    required property point origin
    required property double scaling
    required property size drawn
    // From the drawing's edge to the line.
    property double away: level ? Metrics.mm(4) : Math.max(Metrics.mm(7), widest / 2 + Metrics.mm(1.6))
    // An upright line keeps its figures off the drawing.
    readonly property double widest: {
        let most = 0;
        for (let i = 0; i < shown.length; ++i)
            most = Math.max(most, heldLetters.advanceWidth(String(shown[i])));
        return most;
    }

    readonly property bool level: edge === ChainsModel.Top || edge === ChainsModel.Bottom
    readonly property bool first: edge === ChainsModel.Top || edge === ChainsModel.Left
    readonly property double line: {
        const at = level ? origin.y + (first ? 0 : drawn.height * scaling) : origin.x + (first ? 0 : drawn.width * scaling);
        return at + (first ? -away : away);
    }
    readonly property double arrow: Metrics.mm(2)
    readonly property double lineHeight: Metrics.deskText * 1.15
    readonly property var measures: laid()
    readonly property var none: ({
            "from": 0,
            "to": 0,
            "text": "",
            "held": false,
            "wide": 0,
            "inside": true,
            "short": false,
            "centre": 0,
            "middle": 0
        })

    FontMetrics {
        id: letters
        font.family: Metrics.family
        font.pixelSize: Metrics.deskText
    }
    FontMetrics {
        id: heldLetters
        font.family: Metrics.family
        font.bold: true
        font.pixelSize: Metrics.deskText
    }

    // Places every figure: in its line where it fits, otherwise beside it and clear of the one before.
    function laid(): var {
        const all = [];
        const start = level ? origin.x : origin.y;
        let free = -1e9;
        for (let i = 0; i < shown.length; ++i) {
            const from = start + along[i] * scaling;
            const to = start + along[i + 1] * scaling;
            const text = String(shown[i]);
            const wide = Math.ceil((held[i] ? heldLetters : letters).advanceWidth(text)) + 2;
            const size = level ? wide : lineHeight;
            const inside = size + 2 * arrow + Metrics.mm(1) <= to - from;
            let centre = (from + to) / 2;
            if (!inside) {
                centre = Math.max(centre, free + size / 2);
                free = centre + size / 2 + Metrics.mm(1.2);
            }
            all.push({
                "from": from,
                "to": to,
                "text": text,
                "held": held[i] === true,
                "wide": wide,
                "inside": inside,
                "short": to - from < 2.6 * arrow,
                "centre": centre,
                "middle": (from + to) / 2
            });
        }
        // The last ones may have been pushed past the end: they move back together.
        const end = level ? width : height;
        let most = end;
        for (let i = all.length - 1; i >= 0; --i) {
            const one = all[i];
            if (one.inside)
                continue;
            const half = (level ? one.wide : lineHeight) / 2;
            one.centre = Math.min(one.centre, most - half);
            most = one.centre - half - Metrics.mm(1.2);
        }
        return all;
    }
    function at(position: double, off: double): point {
        return level ? Qt.point(position, line + off) : Qt.point(line + off, position);
    }
    // A closed arrow whose tip is there, pointing along the line.
    function tip(position: double, forward: bool): var {
        const back = position + (forward ? -arrow : arrow);
        const half = arrow * 0.3;
        return [at(position, 0), at(back, -half), at(back, half), at(position, 0)];
    }

    Repeater {
        model: root.along.length

        // From what is meant out to a little beyond the line.
        Shape {
            id: extension

            required property int index
            readonly property double stop: (root.level ? root.origin.x : root.origin.y) + root.along[index] * root.scaling
            readonly property double feature: (root.level ? root.origin.y : root.origin.x) + root.across[index] * root.scaling
            readonly property double past: root.line + (root.first ? -1 : 1) * Metrics.mm(1.2)

            ShapePath {
                strokeColor: Theme.ink
                strokeWidth: Math.max(1, Metrics.hairline)
                strokeStyle: ShapePath.DashLine
                dashPattern: [5, 4]
                fillColor: "transparent"
                PathPolyline {
                    path: root.level ? [Qt.point(extension.stop, extension.feature), Qt.point(extension.stop, extension.past)] : [Qt.point(extension.feature, extension.stop), Qt.point(extension.past, extension.stop)]
                }
            }
        }
    }
    Repeater {
        // By their number, so that a figure that changes stays the same item.
        model: root.shown.length

        Item {
            id: one

            required property int index
            readonly property var modelData: index < root.measures.length ? root.measures[index] : root.none
            readonly property color ink: modelData.held ? Theme.worked : Theme.ink
            // Beside the line, on the side away from the drawing.
            readonly property double beside: (root.first ? -1 : 1) * (root.level ? root.lineHeight * 0.5 + Metrics.mm(2.2) : modelData.wide / 2 + Metrics.mm(3))

            Shape {
                ShapePath {
                    strokeColor: one.ink
                    strokeWidth: one.modelData.held ? Metrics.mm(0.5) : Math.max(1.5, 1.3 * Metrics.hairline)
                    fillColor: "transparent"
                    PathPolyline {
                        path: one.modelData.short ? [root.at(one.modelData.from - root.arrow * 1.6, 0), root.at(one.modelData.to + root.arrow * 1.6, 0)] : [root.at(one.modelData.from, 0), root.at(one.modelData.to, 0)]
                    }
                }
                ShapePath {
                    strokeWidth: -1
                    fillColor: one.ink
                    PathPolyline {
                        path: root.tip(one.modelData.from, one.modelData.short)
                    }
                }
                ShapePath {
                    strokeWidth: -1
                    fillColor: one.ink
                    PathPolyline {
                        path: root.tip(one.modelData.to, !one.modelData.short)
                    }
                }
                ShapePath {
                    strokeColor: one.ink
                    strokeWidth: Math.max(1, Metrics.hairline)
                    fillColor: "transparent"
                    PathPolyline {
                        path: one.modelData.inside ? [] : [root.at(one.modelData.middle, 0), root.level ? Qt.point(one.modelData.centre, root.line + one.beside * 0.45) : Qt.point(root.line + (root.first ? -1 : 1) * Metrics.mm(2.2), one.modelData.centre)]
                    }
                }
            }
            Rectangle {
                anchors.fill: figure
                anchors.margins: -Metrics.mm(0.6)
                visible: one.modelData.inside
                color: Theme.cloth
            }
            Words {
                id: figure
                width: one.modelData.wide
                x: (root.level ? one.modelData.centre : root.line + (one.modelData.inside ? 0 : one.beside)) - width / 2
                y: (root.level ? root.line + (one.modelData.inside ? 0 : one.beside) : one.modelData.centre) - height / 2
                horizontalAlignment: Text.AlignHCenter
                text: one.modelData.text
                color: one.ink
                font.bold: one.modelData.held
                font.pixelSize: Metrics.deskText
                wrapMode: Text.NoWrap
                lineHeight: 1
            }
        }
    }
}
