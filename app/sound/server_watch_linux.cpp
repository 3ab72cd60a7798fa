// Over libpulse, which PulseAudio and PipeWire both answer. The library's callbacks run in its own thread, which
// sleeps until the server has something to tell.
#include <pulse/pulseaudio.h>
#include <unistd.h>

#include <cstring>
#include <optional>
#include <vector>

#include "app/sound/server_watch.h"

namespace app::sound {

struct ServerWatch::Private {
  explicit Private(ServerWatch& owner) : watch(owner) {}

  struct Sink {
    std::uint32_t index = PA_INVALID_INDEX;
    QByteArray name;
    bool muted = false;
    bool leadsNowhere() const { return name == "auto_null"; }
  };

  void refresh();
  void judge();
  void over(pa_operation* operation);

  static bool isSilent(const pa_cvolume& volume) { return pa_cvolume_is_muted(&volume) != 0; }
  static void onState(pa_context* context, void* self);
  static void onEvent(pa_context* context, pa_subscription_event_type_t type, std::uint32_t index, void* self);
  static void onServer(pa_context* context, const pa_server_info* info, void* self);
  static void onSink(pa_context* context, const pa_sink_info* info, int end, void* self);
  static void onStream(pa_context* context, const pa_sink_input_info* info, int end, void* self);
  static void onAnswer(pa_context* context, const pa_server_info* info, void* self);

  ServerWatch& watch;
  pa_threaded_mainloop* loop = nullptr;
  pa_context* context = nullptr;
  // The members below are used in the library's thread alone.
  bool refreshing = false;
  bool again = false;
  QByteArray preferred;
  std::vector<Sink> sinks;
  std::optional<Sink> ownStream;  // its index is the sink's it goes to
  std::optional<Outlet> last;
};

void ServerWatch::Private::over(pa_operation* operation) {
  if (operation) {
    pa_operation_unref(operation);
  } else {
    refreshing = false;
  }
}

void ServerWatch::Private::onState(pa_context* context, void* self) {
  auto* d = static_cast<Private*>(self);
  switch (pa_context_get_state(context)) {
    case PA_CONTEXT_READY: {
      pa_context_set_subscribe_callback(context, onEvent, self);
      constexpr auto kWanted = static_cast<pa_subscription_mask_t>(
          PA_SUBSCRIPTION_MASK_SERVER | PA_SUBSCRIPTION_MASK_SINK | PA_SUBSCRIPTION_MASK_SINK_INPUT);
      if (pa_operation* operation = pa_context_subscribe(context, kWanted, nullptr, nullptr)) {
        pa_operation_unref(operation);
      }
      d->refresh();
      return;
    }
    case PA_CONTEXT_FAILED:
    case PA_CONTEXT_TERMINATED: emit d->watch.lost(); return;
    default: return;
  }
}

void ServerWatch::Private::onEvent(pa_context*, pa_subscription_event_type_t, std::uint32_t, void* self) {
  static_cast<Private*>(self)->refresh();
}

// A slider that is drawn sends dozens of events: one round of questions answers all that come while it goes on.
void ServerWatch::Private::refresh() {
  again = true;
  if (refreshing) return;
  again = false;
  refreshing = true;
  over(pa_context_get_server_info(context, onServer, this));
}

void ServerWatch::Private::onServer(pa_context* context, const pa_server_info* info, void* self) {
  auto* d = static_cast<Private*>(self);
  d->preferred = info && info->default_sink_name ? QByteArray(info->default_sink_name) : QByteArray();
  d->sinks.clear();
  d->over(pa_context_get_sink_info_list(context, onSink, self));
}

void ServerWatch::Private::onSink(pa_context* context, const pa_sink_info* info, int end, void* self) {
  auto* d = static_cast<Private*>(self);
  if (end == 0) {
    d->sinks.push_back({info->index, info->name, info->mute != 0 || isSilent(info->volume)});
    return;
  }
  d->ownStream.reset();
  d->over(pa_context_get_sink_input_info_list(context, onStream, self));
}

void ServerWatch::Private::onStream(pa_context*, const pa_sink_input_info* info, int end, void* self) {
  auto* d = static_cast<Private*>(self);
  if (end == 0) {
    const char* process = pa_proplist_gets(info->proplist, PA_PROP_APPLICATION_PROCESS_ID);
    if (process && QByteArray(process) == QByteArray::number(getpid())) {
      d->ownStream = Sink{info->sink, {}, info->mute != 0 || (info->has_volume && isSilent(info->volume))};
    }
    return;
  }
  d->refreshing = false;
  d->judge();
  if (d->again) d->refresh();
}

void ServerWatch::Private::judge() {
  const Sink* chosen = nullptr;
  for (const Sink& sink : sinks) {
    if (sink.leadsNowhere()) continue;
    if (!chosen || sink.name == preferred) chosen = &sink;
  }
  Outlet now;
  if (chosen) {
    now = {chosen->name, chosen->muted};
    if (ownStream) {
      now.muted = now.muted || ownStream->muted;
      // A mixer may have sent the stream elsewhere.
      for (const Sink& sink : sinks) now.muted = now.muted || (sink.index == ownStream->index && sink.muted);
    }
  }
  if (last == now) return;
  last = now;
  emit watch.changed(now);
}

void ServerWatch::Private::onAnswer(pa_context*, const pa_server_info*, void* self) {
  emit static_cast<Private*>(self)->watch.answered();
}

ServerWatch::ServerWatch(QObject* parent) : QObject(parent), d(std::make_unique<Private>(*this)) {}

ServerWatch::~ServerWatch() {
  if (d->loop) pa_threaded_mainloop_stop(d->loop);
  if (d->context) {
    pa_context_set_state_callback(d->context, nullptr, nullptr);
    pa_context_set_subscribe_callback(d->context, nullptr, nullptr);
    pa_context_disconnect(d->context);
    pa_context_unref(d->context);
  }
  if (d->loop) pa_threaded_mainloop_free(d->loop);
}

void ServerWatch::start() {
  d->loop = pa_threaded_mainloop_new();
  if (d->loop) d->context = pa_context_new(pa_threaded_mainloop_get_api(d->loop), "mountwright");
  if (!d->context) {
    emit lost();
    return;
  }
  pa_threaded_mainloop_set_name(d->loop, "server-watch");
  pa_context_set_state_callback(d->context, &Private::onState, d.get());
  // A server is not started for our sake, and a failed attempt is reported through the state.
  const bool asked = pa_context_connect(d->context, nullptr, PA_CONTEXT_NOAUTOSPAWN, nullptr) >= 0;
  if (!asked || pa_threaded_mainloop_start(d->loop) < 0) emit lost();
}

void ServerWatch::ask() {
  if (!d->loop) return;
  pa_threaded_mainloop_lock(d->loop);
  if (pa_operation* operation = pa_context_get_server_info(d->context, &Private::onAnswer, d.get())) {
    pa_operation_unref(operation);
  }
  pa_threaded_mainloop_unlock(d->loop);
}

}  // namespace app::sound
