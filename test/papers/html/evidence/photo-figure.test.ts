import { describe, expect, it } from 'vitest';
import type { DesignFile } from '#model/schema/schema.ts';
import { readDesign } from '#model/read/read-design.ts';
import { reportHtml } from '#papers/html/report/report.ts';
import { study } from '#judge/study.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import {
  addMeasurement,
  addPhoto,
  measuredBy,
  measurementsOf,
  photosOf,
  sendTo,
  withoutPictures,
} from '#state/photo/photo-record.ts';
import greenhouse from '#demos/greenhouse-timer.json' with { type: 'json' };

const PICTURE = 'data:image/jpeg;base64,AAAA';
const WORDS = 'the <coil> & "its" leads';

function measured(): DesignFile {
  const scale = { length: 10, plusMinus: 0.05, from: { x: 0, y: 0 }, to: { x: 1000, y: 0 }, half: 1 };
  const note = { words: WORDS, width: 1600, height: 1200, turned: 3.5, scale };
  const [photo] = addPhoto(greenhouse as DesignFile, PICTURE, note);
  const points = [
    { x: 11, y: 22 },
    { x: 311, y: 22 },
  ];
  const distance = { measure: 'distance' as const, points, half: 1 };
  const by = measuredBy(distance, photosOf(photo)[0]!.note);
  const [doc] = addMeasurement(photo, { words: 'left margin', photo: 'photo-1', ...distance, ...by });
  return sendTo(doc, measurementsOf(doc)[0]!, 'layers[0].margins.left.width');
}

function report(doc: DesignFile): string {
  const read = readDesign(doc, knownIds);
  if (read.kind === 'bad') throw new Error(read.faults[0]!.says);
  return reportHtml({ design: read.design, judgement: study(read.design), designText: JSON.stringify(doc) });
}

describe('a photograph in the report', () => {
  it('should show the picture with its measurements drawn, told, and tied to their fields', () => {
    const html = report(measured());
    expect(html).toContain(`<image href="${PICTURE}"`);
    expect(html).toContain('M11 22L311 22');
    expect(html).toContain(
      'distance 3 ± 0.05 mm; left margin; picked to 1 px; stands behind left margin, layer 1',
    );
    expect(html).toContain('scale 10 ± 0.05 mm');
    expect(html.match(/measure-1, measurement/g)).toBeNull();
  });

  it('should escape what the words say', () => {
    expect(report(measured())).toContain('the &lt;coil&gt; &amp; &quot;its&quot; leads');
  });

  it('should tell a measurement by itself whose photograph is not in the file', () => {
    expect(report(withoutPictures(measured()))).toContain(
      '<b>measure-1, measurement</b>: left margin; distance 3 ± 0.05 mm on photo-1',
    );
  });

  it('should not show what is no plain bitmap', () => {
    const doc = measured();
    const hostile = {
      ...doc,
      evidence: doc.evidence!.map((each) =>
        each.kind === 'photo' ? { ...each, file: 'data:image/svg+xml;base64,AAAA' } : each,
      ),
    };
    expect(report(hostile)).not.toContain('href="data:image/svg');
  });
});
