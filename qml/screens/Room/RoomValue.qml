import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// One of the two values, underlined where the keys change it.
Column {
    id: root

    required property string caption
    required property string value
    required property bool chosen

    spacing: Metrics.mm(1)

    Words {
        text: root.caption
        color: root.chosen ? Theme.ink : Theme.quiet
        font.pixelSize: Metrics.label
        font.bold: root.chosen
        wrapMode: Text.NoWrap
    }
    Words {
        id: number
        text: root.value
        color: root.chosen ? Theme.ink : Theme.quiet
        font.pixelSize: Metrics.figureLeast
        font.bold: true
        wrapMode: Text.NoWrap
    }
    Rectangle {
        width: number.implicitWidth
        height: Metrics.mm(1)
        color: root.chosen ? Theme.worked : "transparent"
    }
}
