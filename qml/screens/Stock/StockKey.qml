import Mountwright.Controls
import Mountwright.Theme

DeskKey {
    width: Metrics.mm(36)
    height: Metrics.deskKey
}
