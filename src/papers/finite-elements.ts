// The section as a script for FreeFem++, a general-purpose open package for meshes and finite elements: geometry,
// permittivities and potentials, so that anyone can check the field with other means. It prints the matrix of
// capacitances over the permittivity of vacuum, and the energy at the potentials of the first case. Millimetres, volts.
//
// Every wire stands back by 0.4 um all round (`stoodBack`), for that package's mesher cannot join a circle that touches
// a line: beside enamel of 25 um that alone takes some hundredths off a capacitance, so whoever compares gives both the
// section that stands back. Wires and their covers are polygons of the circle's area, everything else level and upright
// lines, cut where they meet.

import type { Box, Disc, FieldSection } from '#field/field-section.ts';
import { nm, type Nm } from '#units/quantity.ts';
import { outlineCuts, type CutLine } from './outline-cuts.ts';

const BACK = nm(400);

/** The section with every wire a little thinner; a bare one gets a cover as thin as it stands back. */
export function stoodBack(section: FieldSection): FieldSection {
  return {
    ...section,
    bodies: section.bodies.map((body) => {
      if (body.shape === 'box') return body;
      const overall = nm(body.overall - 2 * BACK);
      return { ...body, overall, metal: nm(Math.min(body.metal, overall - 2 * BACK)) };
    }),
  };
}

/** Of a section that stands back; `volts` of each electrode; `around`: points round a wire, at least. Plane sections only. */
export function finiteElementScript(section: FieldSection, volts: Float64Array, around = 40): string {
  const discs = section.bodies.filter((body): body is Disc => body.shape === 'disc');
  const boxes = section.bodies.filter((body): body is Box => body.shape === 'box');
  const lines = outlineCuts(section, boxes);
  // circles first, then lines: a label for every electrode, 1 more than its number; 0 holds nothing
  return [
    '// one volt on each conductor in turn; lengths in mm, capacitances over the permittivity of vacuum',
    discArrays(discs, around),
    lineArrays(lines),
    'border W(t=0,2*pi;i){x=cx[i]+cr[i]*cos(t);y=cy[i]+cr[i]*sin(t);label=cl[i];}',
    'border V(t=0,2*pi;i){x=cx[i]+co[i]*cos(t);y=cy[i]+co[i]*sin(t);label=0;}',
    'border L(t=0,1;i){x=ax[i]+t*(bx[i]-ax[i]);y=ay[i]+t*(by[i]-ay[i]);label=al[i];}',
    'mesh Th=buildmesh(W(cn)+V(cn)+L(an),nbvx=2000000);',
    materials(section, discs, boxes),
    conductors(section, volts),
    SOLVE,
  ].join('\n');
}

const num = (value: number): string => `${Number(value.toFixed(7))}`;
/** The package takes no more figures than this in one bracket. */
const MOST_FIGURES = 1000;

function list(type: string, name: string, values: readonly number[]): string {
  const parts = Array.from({ length: Math.ceil(values.length / MOST_FIGURES) }, (_, i) =>
    values.slice(i * MOST_FIGURES, (i + 1) * MOST_FIGURES),
  );
  const written = parts.flatMap((part, i) => [
    `${type}[int] ${name}p${i}=[${part.map(num).join(',')}];`,
    `${name}(${i * MOST_FIGURES}:${i * MOST_FIGURES + part.length - 1})=${name}p${i};`,
  ]);
  return [`${type}[int] ${name}(${values.length});`, ...written].join('\n');
}

function discArrays(discs: readonly Disc[], around: number): string {
  const mm = (value: number) => value / 1e6;
  return [
    list(
      'real',
      'cx',
      discs.map(({ x }) => mm(x)),
    ),
    list(
      'real',
      'cy',
      discs.map(({ y }) => mm(y)),
    ),
    list(
      'real',
      'cr',
      discs.map(({ metal, overall }) => polygonRadius(metal, pointsRound(overall, around))),
    ),
    list(
      'real',
      'co',
      discs.map(({ overall }) => polygonRadius(overall, pointsRound(overall, around))),
    ),
    list(
      'int',
      'cl',
      discs.map(({ electrode }) => electrode + 1),
    ),
    list(
      'int',
      'cn',
      discs.map(({ overall }) => pointsRound(overall, around)),
    ),
  ].join('\n');
}

/** So many that no corner of the polygon reaches further out than half of what wires stand back. */
const pointsRound = (overall: Nm, around: number): number =>
  Math.max(around, Math.ceil(2 * Math.PI * Math.sqrt(overall / 2 / (6 * BACK))));

/** Of the corners, mm: the polygon has the area of the circle. */
const polygonRadius = (diameter: Nm, points: number): number => {
  const step = (2 * Math.PI) / points;
  return (diameter / 2e6) * Math.sqrt(step / Math.sin(step));
};

function lineArrays(lines: readonly CutLine[]): string {
  return [
    list(
      'real',
      'ax',
      lines.map(({ from }) => from[0]),
    ),
    list(
      'real',
      'ay',
      lines.map(({ from }) => from[1]),
    ),
    list(
      'real',
      'bx',
      lines.map(({ to }) => to[0]),
    ),
    list(
      'real',
      'by',
      lines.map(({ to }) => to[1]),
    ),
    list(
      'int',
      'al',
      lines.map(({ electrode }) => (electrode ?? -1) + 1),
    ),
    list(
      'int',
      'an',
      lines.map(({ pieces }) => pieces),
    ),
  ].join('\n');
}

/** Solid boxes as they lie over each other, a later one before an earlier; then a place in every cover tells its region. */
function materials(section: FieldSection, discs: readonly Disc[], boxes: readonly Box[]): string {
  const solid = boxes.filter(({ electrode }) => electrode === null);
  const covers = discs.map((disc) => {
    const ring = (disc.metal + disc.overall) / 4e6;
    return { x: disc.x / 1e6 + ring * Math.SQRT1_2, y: disc.y / 1e6 + ring * Math.SQRT1_2, of: disc };
  });
  const reals = <T>(name: string, of: readonly T[], figure: (one: T) => number): string =>
    list('real', name, of.map(figure));
  return [
    reals('sa', solid, ({ x0 }) => x0 / 1e6),
    reals('sb', solid, ({ y0 }) => y0 / 1e6),
    reals('sc', solid, ({ x1 }) => x1 / 1e6),
    reals('sd', solid, ({ y1 }) => y1 / 1e6),
    reals('se', solid, ({ permittivity }) => permittivity),
    reals('mx', covers, ({ x }) => x),
    reals('my', covers, ({ y }) => y),
    reals('me', covers, ({ of }) => of.permittivity),
    `fespace P0h(Th,P0);P0h eps=${num(section.background)};`,
    'for(int k=0;k<se.n;k++)eps=eps+(se[k]-eps)*(x>sa[k])*(x<sc[k])*(y>sb[k])*(y<sd[k]);',
    'int most=0;for(int k=0;k<Th.nt;k++)most=max(most,Th[k].region);',
    'real[int] ofRegion(most+1);ofRegion=0;',
    'for(int k=0;k<mx.n;k++)ofRegion[Th(mx[k],my[k]).region]=me[k];',
    'eps=eps*(ofRegion[region]==0)+ofRegion[region];',
  ].join('\n');
}

function conductors({ conductors: names, electrodes }: FieldSection, volts: Float64Array): string {
  return [
    ...names.map((name, i) => `// conductor ${i}: ${name.replace(/[^\w -]/g, '_')}`),
    list('int', 'ofElectrode', electrodes),
    list(
      'int',
      'labels',
      electrodes.map((_, i) => i + 1),
    ),
    list('real', 'atWork', [...volts]),
    `int conductors=${names.length};`,
  ].join('\n');
}

const SOLVE = `fespace Vh(Th,P2);
varf field(u,v)=int2d(Th)(eps*(dx(u)*dx(v)+dy(u)*dy(v)));
varf held(u,v)=int2d(Th)(eps*(dx(u)*dx(v)+dy(u)*dy(v)))+on(labels,u=0);
matrix A=field(Vh,Vh);
matrix S=held(Vh,Vh,solver=sparsesolver);
real[int,int] all(Vh.ndof,conductors);
real[int] s(Vh.ndof),g(Vh.ndof);
for(int c=0;c<conductors;c++){
  varf one(u,v)=on(labels,u=1.*(ofElectrode[label-1]==c));
  real[int] b=one(0,Vh);
  s=S^-1*b;
  all(:,c)=s;
}
cout.precision(10);
for(int c=0;c<conductors;c++){
  s=all(:,c);
  g=A*s;
  for(int e=0;e<=c;e++){
    real[int] w=all(:,e);
    cout<<"C "<<c<<" "<<e<<" "<<(g'*w)<<endl;
  }
}
varf work(u,v)=on(labels,u=atWork[label-1]);
real[int] bw=work(0,Vh);
s=S^-1*bw;
g=A*s;
cout<<"energy "<<(g'*s)/2<<endl;
cout<<"points "<<Th.nv<<" unknowns "<<Vh.ndof<<endl;
`;
