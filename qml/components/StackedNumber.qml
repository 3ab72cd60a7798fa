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
    // Tenths are read after the millimetres: of a large number they are smaller, but never under the least of a number.
    readonly property var parts: wholeSize * tenthsShare >= tenthsLeast ? whole.split(".") : [whole]
    readonly property double tenthsShare: 0.75
    property double tenthsLeast: Metrics.figureLeast
    property int unitSize: Metrics.text
    property color ink: Theme.worked
    // Its digits with a little air: a line of text has more above and below than is needed beside a drawing.
    readonly property double high: Math.max(wholeSize * (fraction ? alone ? 2 * aloneShare + 0.06 : 1.22 : 0.96), height - 0.5 * neighbours)
    property int neighbours: Metrics.label  // letters of the words above and below it

    spacing: Math.round(wholeSize * 0.12)
    // The fraction alone, or beside a sign, is the whole number, and larger.
    readonly property bool alone: !/\d/.test(whole)
    property double aloneShare: 0.8
    // The fraction reaches below the digits beside it.
    bottomPadding: fraction && !alone ? Math.round(wholeSize * 0.1) : 0

    Row {
        id: digits
        visible: root.whole !== ""

        Words {
            id: number
            text: root.parts[0]
            color: root.ink
            font.pixelSize: root.wholeSize
            font.bold: true
            wrapMode: Text.NoWrap
            lineHeight: 0.86
        }
        Words {
            y: number.baselineOffset - baselineOffset
            visible: text !== ""
            text: root.parts.length > 1 ? "." + root.parts[1] : ""
            color: root.ink
            font.pixelSize: Math.floor(root.wholeSize * root.tenthsShare)
            font.bold: true
            wrapMode: Text.NoWrap
            lineHeight: 0.86
        }
    }
    Column {
        id: stack
        readonly property int digitSize: Math.ceil(root.wholeSize * (root.alone ? root.aloneShare : 0.58))

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
        y: digits.visible ? digits.y + number.baselineOffset - baselineOffset : (root.height - height) / 2
        visible: root.unitBeside
        text: root.unit
        color: root.ink
        font.pixelSize: root.unitSize
        font.bold: true
        wrapMode: Text.NoWrap
        lineHeight: 1
    }
}
