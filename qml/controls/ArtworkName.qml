import QtQuick
import Mountwright.Theme

// The name of an artwork: the only words in serif letters, so that which piece is never taken for what to do.
Words {
    objectName: "artwork"
    font.family: Metrics.artworkFamily
    font.italic: true
    font.pixelSize: Metrics.name
}
