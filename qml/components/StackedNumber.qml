import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// A number at full height, its fraction stacked, the unit beside it.
Row {
    id: root

    property string whole: ""
    property bool fraction: denominator !== ""
    property string numerator: ""
    property string denominator: ""
    property string unit: ""
    property bool unitBeside: true
    property int wholeSize: Metrics.figure
    property int unitSize: Metrics.text
    property color ink: Theme.worked

    spacing: Math.round(wholeSize * 0.12)
    // The fraction reaches below the digits beside it.
    bottomPadding: fraction ? Math.round(wholeSize * 0.1) : 0

    Words {
        id: number
        visible: text !== ""
        text: root.whole
        color: root.ink
        font.pixelSize: root.wholeSize
        font.bold: true
        wrapMode: Text.NoWrap
        lineHeight: 0.86
    }
    Column {
        id: stack
        readonly property int digitSize: Math.ceil(root.wholeSize * 0.58)

        visible: root.fraction
        anchors.verticalCenter: parent.verticalCenter
        width: Math.max(upper.implicitWidth, lower.implicitWidth, digitSize * 0.6)

        Words {
            id: upper
            anchors.horizontalCenter: parent.horizontalCenter
            text: root.numerator
            color: root.ink
            font.pixelSize: stack.digitSize
            font.bold: true
            height: stack.digitSize
            verticalAlignment: Text.AlignVCenter
            wrapMode: Text.NoWrap
            lineHeight: 1
        }
        Rectangle {
            width: parent.width
            height: Math.max(2, stack.digitSize / 14)
            color: root.ink
        }
        Words {
            id: lower
            anchors.horizontalCenter: parent.horizontalCenter
            text: root.denominator
            color: root.ink
            font.pixelSize: stack.digitSize
            font.bold: true
            height: stack.digitSize
            verticalAlignment: Text.AlignVCenter
            wrapMode: Text.NoWrap
            lineHeight: 1
        }
    }
    Words {
        y: number.visible ? number.y + number.baselineOffset - baselineOffset : (root.height - height) / 2
        visible: root.unitBeside
        text: root.unit
        color: root.ink
        font.pixelSize: root.unitSize
        font.bold: true
        wrapMode: Text.NoWrap
        lineHeight: 1
    }
}
