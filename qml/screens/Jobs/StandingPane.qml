import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme

// How a piece stands: which it is, how far it has come, what is done next, and what it waits for.
FitPane {
    id: root

    required property string title
    required property string act
    required property string wait
    required property bool window
    required property int done
    required property int all

    key: title + act + wait + done
    tightest: 3
    spacing: level < 2 ? Metrics.mm(1) : 0

    ArtworkName {
        objectName: "standingName"
        width: parent.width
        text: root.title
        font.pixelSize: Math.ceil((root.level < 1 ? Metrics.title : root.level < 3 ? Metrics.text : Metrics.label) * Metrics.serif)
        lineHeight: root.level < 2 ? 0.95 : 0.85
    }
    ProgressRule {
        width: parent.width
        visible: root.all > 0 && root.level < 3
        done: root.done
        all: root.all
    }
    Words {
        width: parent.width
        visible: root.all > 0
        text: qsTr("%1 of %2 steps").arg(root.done).arg(root.all)
        color: Theme.quiet
        font.pixelSize: Metrics.label
    }
    Words {
        width: parent.width
        text: root.act
        font.bold: true
        font.pixelSize: root.level < 2 ? Metrics.text : Metrics.label
        lineHeight: 0.85
    }
    Words {
        width: parent.width
        visible: text !== ""
        text: root.wait
        color: root.window ? Theme.worked : Theme.calm
        font.bold: true
        font.pixelSize: root.level < 1 ? Metrics.text : Metrics.label
        lineHeight: 0.85
    }
}
