pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// A part of a rule with what would come of each value: the planned one's tolerance is a bracket, the other bands lie
// beside it, each with its word, and a marker stands at the value. The rule lies still while the marker moves on it; only
// where it would leave the rule the next part is laid out.
Item {
    id: root

    // { "at", "label" } and { "from", "to", "word", "since", "until", "drawn" }, in the unit of the values; since and until
    // are its ends in words, "" where it has none.
    required property var ticks
    required property var bands
    required property double drawnAt
    required property double value
    required property double reading
    property bool touched: false
    // A reading is as wide as a finger can tell apart at arm's length.
    readonly property double step: Metrics.mm(9)
    readonly property double perUnit: step / reading
    readonly property double span: width / perUnit
    // The part shown is centred on the planned value, or as many half parts further as the value asks.
    readonly property double margin: span * 0.1
    readonly property double turn: span * 0.5
    readonly property double off: value - drawnAt
    readonly property int turns: Math.abs(off) <= span / 2 - margin ? 0 : Math.sign(off) * Math.ceil((Math.abs(off) - span / 2 + margin) / turn)
    readonly property double from: drawnAt - span / 2 + turns * turn
    readonly property double to: from + span
    readonly property double bandsHeight: Metrics.mm(7)
    readonly property double ruleHeight: Metrics.mm(9.2)

    implicitHeight: bandsHeight + ruleHeight
    height: implicitHeight

    function place(at: double): double {
        return (at - from) * perUnit;
    }

    Rectangle {
        id: rule
        objectName: "rule"
        y: root.bandsHeight
        width: root.width
        height: root.ruleHeight
        color: Theme.hair
    }
    Rectangle {
        y: rule.y
        width: root.width
        height: Metrics.mm(0.5)
        color: Theme.ink
    }
    Repeater {
        model: root.bands

        Item {
            id: band

            required property var modelData
            readonly property double begin: Math.max(0, root.place(modelData.from))
            readonly property double end: Math.min(root.width, root.place(modelData.to))
            readonly property bool drawn: modelData.drawn
            readonly property bool here: root.value > modelData.from - 1e-9 && root.value <= modelData.to + 1e-9
            readonly property double line: Metrics.mm(0.5)
            // An end that lies beyond the part shown is said.
            readonly property string told: {
                if (modelData.until !== "" && modelData.to > root.to)
                    return qsTr("%1, to %2").arg(modelData.word).arg(modelData.until);
                if (modelData.since !== "" && modelData.from < root.from)
                    return qsTr("%1, from %2").arg(modelData.word).arg(modelData.since);
                return modelData.word;
            }

            objectName: "band"
            visible: end > begin
            x: begin
            width: Math.max(0, end - begin)
            height: root.bandsHeight

            // Where it begins, but at the edge of what is shown.
            Rectangle {
                visible: band.begin > 0
                x: -band.line / 2
                width: band.line
                height: parent.height
                color: Theme.ink
            }
            Rectangle {
                visible: band.drawn
                x: -band.line / 2
                width: parent.width + band.line
                height: Metrics.mm(0.7)
                color: Theme.ink
            }
            Words {
                objectName: "bandWord"
                anchors.centerIn: parent
                visible: implicitWidth + Metrics.mm(1.6) <= parent.width
                text: band.told
                font.pixelSize: Metrics.label
                font.bold: band.here
                wrapMode: Text.NoWrap
                lineHeight: 1
            }
        }
    }
    Repeater {
        model: root.ticks

        Item {
            id: tick

            required property var modelData
            readonly property bool named: modelData.label !== ""

            visible: modelData.at > root.from && modelData.at < root.to
            x: root.place(modelData.at)
            y: rule.y

            Rectangle {
                x: -width / 2
                width: Metrics.mm(tick.named ? 0.5 : 0.35)
                height: Metrics.mm(tick.named ? 3.2 : 2.2)
                color: Theme.ink
            }
            Words {
                visible: tick.named && tick.x > implicitWidth / 2 && tick.x < root.width - implicitWidth / 2
                x: -implicitWidth / 2
                y: root.ruleHeight - implicitHeight
                text: tick.modelData.label
                font.pixelSize: Metrics.label
                wrapMode: Text.NoWrap
                lineHeight: 1
            }
        }
    }
    // The marker, hollow until the value is the maker's own.
    Canvas {
        id: marker
        objectName: "marker"
        property color ink: root.touched ? Theme.worked : Theme.quiet
        property color halo: Theme.ground
        property bool filled: root.touched

        x: root.place(root.value) - width / 2
        y: rule.y - Metrics.mm(0.6)
        width: Metrics.mm(6)
        height: Metrics.mm(5)
        onInkChanged: requestPaint()
        onHaloChanged: requestPaint()
        onFilledChanged: requestPaint()
        onPaint: {
            const c = getContext("2d");
            c.reset();
            c.beginPath();
            c.moveTo(Metrics.mm(0.5), Metrics.mm(0.3));
            c.lineTo(width - Metrics.mm(0.5), Metrics.mm(0.3));
            c.lineTo(width / 2, height - Metrics.mm(0.3));
            c.closePath();
            c.fillStyle = filled ? ink : halo;
            c.fill();
            c.strokeStyle = ink;
            c.lineWidth = Metrics.mm(0.4);
            c.stroke();
        }
    }
}
