import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// One job as a key: its title, its progress, its running waits.
TouchKey {
    id: root

    required property int index
    required property string title
    required property string where
    required property string runs

    signal taken

    legend: ""
    offers: ScreenAction {
        name: "job" + root.index
        text: root.title
        onTriggered: root.taken()
    }

    FitPane {
        id: pane
        anchors.fill: parent
        anchors.margins: Metrics.mm(3)
        key: root.title + root.where + root.runs
        tightest: 2

        Words {
            width: parent.width
            text: root.title
            font.bold: true
            font.pixelSize: pane.level === 0 ? Metrics.title : Metrics.text
        }
        Words {
            width: parent.width
            text: root.where
            font.pixelSize: pane.level < 2 ? Metrics.text : Metrics.label
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.runs
            color: Theme.calm
            font.pixelSize: pane.level < 2 ? Metrics.text : Metrics.label
        }
    }
}
