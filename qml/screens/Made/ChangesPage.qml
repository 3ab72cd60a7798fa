import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// What the measures changed of what is still to be done, and what was done with the old figures.
CornerFrame {
    id: root

    required property MadeViewModel made
    required property ScreenBase area
    readonly property bool allSeen: text.page + 1 >= text.pages

    function turn() {
        text.page = Math.min(text.page + 1, text.pages - 1);
    }

    function done() {
        area.done();
    }
    function back() {
        area.back();
    }

    keys: TouchKey {
        objectName: "turn"
        visible: text.pages > 1
        width: Metrics.corner
        height: Metrics.benchKey
        legend: qsTr("Turn")
        hint: qsTr("%1 of %2").arg(text.page + 1).arg(text.pages)
        onActed: root.turn()
    }

    Words {
        id: heading
        width: parent.width
        text: root.made.contradicted.length > 0 ? qsTr("Finished work no longer agrees") : qsTr("This follows from what you measured")
        color: root.made.contradicted.length > 0 ? Theme.worked : Theme.ink
        font.bold: true
        font.pixelSize: Metrics.title
    }
    PagedText {
        id: text
        anchors.top: heading.bottom
        anchors.topMargin: Metrics.mm(3)
        anchors.bottom: parent.bottom
        width: parent.width
        paragraphs: [...root.made.contradicted, ...root.made.changes]
    }
}
