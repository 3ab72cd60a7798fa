// The least a Qt Quick program can be: one window, nothing in it that moves. What other programs are measured against.
#include <QGuiApplication>
#include <QQuickWindow>
#include <cstdio>

int main(int count, char** arguments) {
  QGuiApplication application(count, arguments);
  QQuickWindow window;
  window.setColor(Qt::white);
  // Where nothing manages windows none is made larger than it asks to be.
  window.resize(1280, 800);
  window.show();
  return QGuiApplication::exec();
}
