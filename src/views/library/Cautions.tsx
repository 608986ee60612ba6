import { CAUTION_CLOSE, CAUTIONS } from '../words/cautionWords.ts';

/** Where this work can hurt someone. */
export function Cautions() {
  return (
    <section className="card cautions" aria-labelledby="caution-title">
      <h2 id="caution-title">Take care</h2>
      <dl>
        {CAUTIONS.map((caution) => (
          <div key={caution.what}>
            <dt>{caution.what}</dt>
            <dd>{caution.text}</dd>
          </div>
        ))}
      </dl>
      <p className="small soft">{CAUTION_CLOSE}</p>
    </section>
  );
}
