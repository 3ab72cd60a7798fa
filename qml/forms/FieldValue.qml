import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The value of a field in its sunk box: a number in bold with its unit beside it, a word, what it looks like. The box of
// the field in hand is framed, and shows what is keyed in while it is keyed.
Item {
    id: root

    required property string value
    required property pieceDrawing sample
    property FormViewModel keyed: null  // the form whose pad is at this field; null for none
    property bool inHand: false
    property bool sampled: false
    property bool leftAligned: false
    readonly property double lines: figure.implicitHeight
    readonly property bool keying: keyed !== null && keyed.keyed
    // "130.0 mm" parted into figure and unit; whatever is no measure stays whole.
    readonly property int unitAt: {
        const at = value.lastIndexOf(" ");
        return at > 0 && ["mm", "in", "%"].indexOf(value.slice(at + 1)) >= 0 && value.charAt(0) <= "9" ? at : -1;
    }
    readonly property double margin: Metrics.mm(2)
    readonly property double sampleRoom: sampled ? swatch.width + Metrics.mm(1.5) : 0

    // The width it would have on one line.
    readonly property double wanted: figure.implicitWidth + (unit.visible ? unit.implicitWidth + Metrics.mm(1) : 0) + sampleRoom + 2 * margin

    KeyFace {
        anchors.fill: parent
        sunk: true
        pointed: root.inHand
    }
    Sample {
        id: swatch
        x: root.margin
        anchors.verticalCenter: parent.verticalCenter
        visible: root.sampled
        width: Metrics.mm(6)
        height: width
        shown: root.sample
    }
    StackedNumber {
        anchors.right: parent.right
        anchors.rightMargin: root.margin
        anchors.verticalCenter: parent.verticalCenter
        visible: root.keying
        wholeSize: Metrics.deskText
        unitSize: Metrics.deskLabel
        whole: visible ? root.keyed.whole : ""
        fraction: visible && root.keyed.fraction
        numerator: visible ? root.keyed.numerator : ""
        denominator: visible ? root.keyed.denominator : ""
        unit: visible ? root.keyed.unit : ""
        ink: Theme.worked
    }
    Words {
        id: unit
        x: root.leftAligned ? figure.x + figure.contentWidth + Metrics.mm(1) : root.width - root.margin - width
        anchors.baseline: figure.baseline
        visible: root.unitAt > 0 && !root.keying
        text: root.unitAt > 0 ? root.value.slice(root.unitAt + 1) : ""
        color: Theme.quiet
        font.pixelSize: Metrics.deskLabel
        wrapMode: Text.NoWrap
    }
    Words {
        id: figure
        anchors.verticalCenter: parent.verticalCenter
        x: root.margin + root.sampleRoom
        width: root.width - x - root.margin - (unit.visible ? unit.width + Metrics.mm(1) : 0)
        visible: !root.keying
        horizontalAlignment: root.leftAligned ? Text.AlignLeft : Text.AlignRight
        text: root.unitAt > 0 ? root.value.slice(0, root.unitAt) : root.value
        color: root.inHand && root.keyed !== null ? Theme.worked : Theme.ink
        font.bold: true
        font.pixelSize: Metrics.deskText
        maximumLineCount: 2
    }
}
