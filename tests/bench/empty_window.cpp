// The least a Qt Quick program can be: one window, nothing in it that moves. What other programs are measured against.
#include <QGuiApplication>
#include <QQuickWindow>
#include <cstdio>

int main(int count, char** arguments) {
  QGuiApplication application(count, arguments);
  QQuickWindow window;
  window.setColor(Qt::white);
  window.showMaximized();
  return QGuiApplication::exec();
}
