import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// A caution: signal word with its bar, hazard, what to avoid. It is shown before the act. It alone is framed though it
// cannot be pressed.
Rectangle {
    id: root

    required property bool shown
    required property string sign
    required property string word
    required property string hazard
    required property string says
    // Where what it stands below needs every line.
    property bool low: false
    // More than a glance takes in, two lines of it, is told in smaller letters.
    readonly property int textSize: low || letters.advanceWidth(root.word + " " + root.hazard + "  " + root.says) > 1.85 * said.width ? Metrics.label : Metrics.text
    readonly property double inset: Metrics.mm(1)
    readonly property color bar: word === "DANGER" ? Theme.barDanger : word === "WARNING" ? Theme.barWarning : word === "CAUTION" ? Theme.barCaution : Theme.barNotice

    // Returns whether it would stand on that many lines of small letters in a box of that width.
    function fitsIn(lines: int, wide: double): bool {
        const margins = stripe.x + stripe.width + Metrics.mm(5) + (sign === "" ? 0 : Metrics.sign + Metrics.mm(2));
        const told = letters.advanceWidth(word + " " + hazard + "  " + says) * Metrics.label / Metrics.text;
        // A line ends at a word.
        return told <= (lines - 0.3) * (wide - margins);
    }

    visible: shown
    height: shown ? Math.max(drawn.visible ? drawn.height : 0, said.implicitHeight) + 2 * inset : 0
    color: Theme.card
    border.color: Theme.ink
    border.width: Metrics.mm(0.5)

    FontMetrics {
        id: letters
        font.family: Metrics.family
        font.bold: true
        font.pixelSize: Metrics.text
    }
    Rectangle {
        id: stripe
        objectName: "bar"
        x: root.border.width
        y: x
        width: Metrics.mm(2.4)
        height: root.height - 2 * y
        color: root.bar
    }
    SafetySign {
        id: drawn
        x: stripe.x + stripe.width + Metrics.mm(2)
        anchors.verticalCenter: parent.verticalCenter
        visible: root.sign !== ""
        sign: root.sign
    }
    Words {
        id: said
        anchors.verticalCenter: parent.verticalCenter
        x: drawn.visible ? drawn.x + drawn.width + Metrics.mm(3) : stripe.x + stripe.width + Metrics.mm(3)
        width: root.width - x - Metrics.mm(2)
        text: "<b>%1 %2</b>&nbsp; %3".arg(root.word).arg(root.hazard).arg(root.says)
        textFormat: Text.StyledText
        font.pixelSize: root.textSize
    }
}
