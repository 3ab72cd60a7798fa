pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// Where to go from the bench: back to the piece left last, to the test of each wait, to the other pieces. In the shelf's
// place what the piece on the bench still takes.
CornerFrame {
    id: root

    required property PlacesModel places
    required property WatchViewModel watch
    readonly property double hour: Metrics.mm(16.27)
    // What begins beyond the fold has its own room at the right.
    readonly property double axisWidth: shelf.foldHours * hour + Metrics.mm(17)
    readonly property double rowsWidth: wordsRight - Metrics.mm(4)
    readonly property bool outlined: rowsWidth > axisWidth + Metrics.mm(90)
    readonly property double axisLeft: outlined ? rowsWidth - axisWidth : 0

    idle: true
    shelfCovered: true
    doneAction.filled: false

    function done() {
        over();
    }
    function closed() {
        places.leave();
    }
    function go(row: int) {
        if (places.choose(row))
            asked("test");
        else
            over();
    }

    Component.onCompleted: places.enter()

    actions: [
        ScreenAction {
            name: "turn"
            text: qsTr("Page")
            hint: root.places.place
            enabled: root.places.pages > 1
            place: ScreenAction.TopCorner
            onTriggered: root.places.turnPage()
        }
    ]

    Words {
        id: time
        objectName: "watch"
        text: root.watch.time
        font.bold: true
        font.pixelSize: Metrics.label
        wrapMode: Text.NoWrap
    }
    Words {
        id: heading
        anchors.baseline: time.baseline
        x: time.width + Metrics.mm(3)
        width: (root.outlined && root.shelf.count > 0 ? root.axisLeft - Metrics.mm(9) : root.rowsWidth) - x
        text: root.places.count === 0 ? qsTr("Nothing is drying, and there is no other piece.") : qsTr("Go to")
        color: Theme.quiet
        font.pixelSize: Metrics.label
    }
    HourAxis {
        visible: root.outlined && root.shelf.count > 0
        width: root.rowsWidth
        height: implicitHeight
        shelf: root.shelf
        axisLeft: root.axisLeft
        hour: root.hour
        hours: root.shelf.foldHours
        folded: true
    }
    Column {
        // As high as leaves the last row its distance from the corners.
        y: root.upright ? Metrics.mm(9) : root.shelfPlace.y - parent.y - 3 * (Metrics.benchKey + Metrics.gap)
        width: root.rowsWidth
        spacing: Metrics.gap

        Repeater {
            model: root.places

            PlaceKey {
                width: root.rowsWidth
                axisLeft: root.axisLeft
                hour: root.hour
                foldHours: root.shelf.foldHours
                onTaken: root.go(index)
            }
        }
    }
    // What the work on the bench still comes to: reckoned, and said to be so.
    Column {
        x: root.shelfPlace.x - parent.x + Metrics.mm(3)
        y: root.shelfPlace.y - parent.y + Metrics.mm(1)
        width: root.shelfPlace.width - Metrics.mm(6)

        ArtworkName {
            width: parent.width
            visible: text !== ""
            text: root.places.piece
            font.pixelSize: Metrics.labelName
            lineHeight: 1
        }
        Words {
            objectName: "ahead"
            width: parent.width
            visible: text !== ""
            text: root.places.ahead
            font.pixelSize: Metrics.label
            lineHeight: 1
        }
        Words {
            objectName: "today"
            width: parent.width
            visible: text !== ""
            text: root.places.today
            color: Theme.quiet
            font.pixelSize: Metrics.label
            lineHeight: 1
        }
    }
}
