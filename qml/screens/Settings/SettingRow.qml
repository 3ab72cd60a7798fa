import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// One setting: its name and meaning, and below them its keys.
Column {
    id: root

    required property string called
    property string meaning: ""
    property bool grave: false
    default property alias content: keys.data

    spacing: Metrics.mm(1)

    Words {
        width: parent.width
        text: root.called
        font.bold: true
        font.pixelSize: Metrics.deskTitle
    }
    Words {
        width: parent.width
        visible: text !== ""
        text: root.meaning
        color: root.grave ? Theme.worked : Theme.quiet
        font.bold: root.grave
        font.pixelSize: Metrics.deskText
    }
    Flow {
        id: keys
        width: parent.width
        spacing: Metrics.deskGap
    }
}
