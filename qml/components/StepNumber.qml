import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// One figure: whole number at full height, its fraction stacked, the unit beside it.
Row {
    id: root

    required property FigureViewModel figure
    property int wholeSize: Metrics.figure
    property int unitSize: Metrics.text
    property color ink: Theme.worked

    spacing: Math.round(wholeSize * 0.12)

    Words {
        id: whole
        visible: text !== ""
        text: root.figure.sign + root.figure.whole
        color: root.ink
        font.pixelSize: root.wholeSize
        font.bold: true
        wrapMode: Text.NoWrap
        lineHeight: 1
    }
    Column {
        id: fraction
        readonly property int digitSize: Math.ceil(root.wholeSize * 0.58)

        visible: root.figure.denominator !== ""
        anchors.verticalCenter: parent.verticalCenter
        width: Math.max(upper.implicitWidth, lower.implicitWidth)

        Words {
            id: upper
            anchors.horizontalCenter: parent.horizontalCenter
            text: root.figure.numerator
            color: root.ink
            font.pixelSize: fraction.digitSize
            font.bold: true
            height: fraction.digitSize
            verticalAlignment: Text.AlignVCenter
            wrapMode: Text.NoWrap
            lineHeight: 1
        }
        Rectangle {
            width: parent.width
            height: Math.max(2, fraction.digitSize / 14)
            color: root.ink
        }
        Words {
            id: lower
            anchors.horizontalCenter: parent.horizontalCenter
            text: root.figure.denominator
            color: root.ink
            font.pixelSize: fraction.digitSize
            font.bold: true
            height: fraction.digitSize
            verticalAlignment: Text.AlignVCenter
            wrapMode: Text.NoWrap
            lineHeight: 1
        }
    }
    Words {
        y: whole.visible ? whole.y + whole.baselineOffset - baselineOffset : (root.height - height) / 2
        text: root.figure.unit
        color: root.ink
        font.pixelSize: root.unitSize
        font.bold: true
        wrapMode: Text.NoWrap
        lineHeight: 1
    }
}
