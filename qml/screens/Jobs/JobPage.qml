import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// One job off the bench: its progress, and what else can be done with it. Done goes to the bench with it.
CornerFrame {
    id: root

    required property JobsModel jobs

    function done() {
        over();
    }

    actions: ScreenAction {
        name: "cutting"
        text: qsTr("Cut sheets")
        place: ScreenAction.AboveDone
        onTriggered: root.asked("cutting")
    }

    Column {
        width: parent.width
        spacing: Metrics.mm(3)

        Words {
            width: parent.width
            text: root.jobs.chosenTitle
            font.bold: true
            font.pixelSize: Metrics.title
        }
        Words {
            width: parent.width
            text: root.jobs.chosenWhere
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.jobs.chosenRuns
            color: Theme.calm
        }
    }
    Words {
        anchors.bottom: parent.bottom
        width: parent.width
        text: qsTr("Done: on the bench with it.")
        color: Theme.quiet
        font.pixelSize: Metrics.label
    }
}
