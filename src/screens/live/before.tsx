import type { App } from "../app.ts";

/** How many times faster than it was fished the sample is played: four hours in about two minutes. */
const SAMPLE_SPEED = 120;

/** What is read before a session starts, and never stands in the way afterwards. */
export function Before({ app }: { app: App }) {
  const start = () => app.addEntry({ kind: "session", act: "start" }, app.now.value);
  return (
    <section class="before" aria-label="Before you start">
      <div class="ticket">
        <h2>Begin</h2>
        <p>
          Say “start the session”, or just the first thing that happens: “fish, two pounds”. From
          then on the phone can lie on the tray.
        </p>
        <div class="row">
          <button type="button" class="button button-main" onClick={start}>
            Start the session
          </button>
          {!app.sample.value && (
            <button type="button" class="button" onClick={() => app.playSample(SAMPLE_SPEED)}>
              Play a sample session
            </button>
          )}
        </div>
        <div class="row">
          <a class="button" href="#set-up">
            Name the water
          </a>
          <a class="button" href="#phrases">
            What you can say
          </a>
        </div>
      </div>
      <Cautions />
    </section>
  );
}

/**
 * Sources: Energy Networks Association angling advice (power lines), US National Weather Service
 * (lightning), RNLI and RLSS UK (water), Environment Agency (fish), GOV.UK (licence).
 */
function Cautions() {
  return (
    <section class="ticket cautions" aria-labelledby="cautions">
      <h2 id="cautions">Look round first</h2>
      <dl>
        <dt>Power lines</dt>
        <dd>
          A pole conducts, and electricity jumps. Stay 30 m or more from overhead lines, and further
          where the network operator says so. Carry the pole level.
        </dd>
        <dt>Lightning</dt>
        <dd>At the first thunder put the pole down and take shelter.</dd>
        <dt>Water</dt>
        <dd>
          It is deep and cold. Fish with company, or tell someone where you are. If you fall in,
          float first.
        </dd>
        <dt>Fish</dt>
        <dd>
          Wet hands and mat, mind the hook, short times in the keepnet and shorter ones in heat.
        </dd>
      </dl>
      <p>
        The fishery’s rules, the byelaws, your rod licence and local advice come first. The weights
        and warnings here are an aid, not the last word.
      </p>
    </section>
  );
}
