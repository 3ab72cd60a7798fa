import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// One job off the bench: as far as it has grown, how it stands, and what else can be done with it. Done goes to the bench
// with it.
CornerFrame {
    id: root

    required property JobsModel jobs
    required property SettingsViewModel settings
    required property WatchViewModel watch

    function done() {
        over();
    }

    actions: [
        ScreenAction {
            name: "cutting"
            text: qsTr("Cut sheets")
            place: ScreenAction.AboveDone
            onTriggered: root.asked("cutting")
        },
        // In which way the maker is led, on this tablet; one record, whichever it is.
        ScreenAction {
            name: "way"
            text: root.settings.brief ? qsTr("Every act") : qsTr("Short way")
            place: ScreenAction.AboveDone
            onTriggered: root.settings.turnWay()
        }
    ]

    NowLine {
        id: now
        width: parent.width
        time: root.watch.time
    }
    Rectangle {
        id: plate
        // It bleeds off the left edge.
        x: -Metrics.mm(4)
        y: now.height + Metrics.mm(2)
        width: root.upright ? parent.width - x : Math.ceil(parent.width * 0.4) - x
        height: root.upright ? Math.ceil(parent.height * 0.4) : parent.height - y
        color: Theme.cloth

        PieceView {
            anchors.fill: parent
            anchors.margins: Metrics.mm(3)
            drawing: root.jobs.chosenPicture
        }
    }
    StandingPane {
        x: root.upright ? 0 : plate.x + plate.width + Metrics.mm(5)
        y: root.upright ? plate.y + plate.height + Metrics.mm(3) : plate.y
        width: parent.width - x
        height: led.y - y - Metrics.mm(2)
        title: root.jobs.chosenTitle
        act: root.jobs.chosenAct
        wait: root.jobs.chosenWait
        window: root.jobs.chosenWindow
        done: root.jobs.chosenDone
        all: root.jobs.chosenAll
    }
    Words {
        id: led
        anchors.bottom: parent.bottom
        anchors.right: parent.right
        width: root.upright ? parent.width : parent.width - plate.x - plate.width - Metrics.mm(5)
        text: (root.settings.brief ? qsTr("Led the short way, a stretch of a stage at a time.") : qsTr("Led act by act.")) + " " + qsTr("Done: on the bench with it.")
        color: Theme.quiet
        font.pixelSize: Metrics.label
    }
}
