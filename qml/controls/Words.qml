import QtQuick
import Mountwright.Theme

// Text that wraps and is never cut.
Text {
    property bool far: false

    color: Theme.ink
    font.family: Metrics.family
    font.pixelSize: Metrics.text
    wrapMode: Text.Wrap
    textFormat: Text.PlainText
    lineHeight: 0.95
}
